package baysheet.wording;

import baysheet.books.Place;
import baysheet.sheet.Detail;
import baysheet.sheet.MissingFigure;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.torque.Drive;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sentence of each {@link Statement}. */
final class Statements {
  private final Language language;

  Statements(Language language) {
    this.language = language;
  }

  String text(Statement it) {
    if (it instanceof Statement.Written written) {
      return language.text(written.text());
    } else if (it instanceof Statement.Plain plain) {
      return plain == Statement.Plain.SECOND_PERSON
          ? language.own(Phrase.SECOND_PERSON_WANTED)
          : language.own(Phrase.valueOf(plain.name()));
    } else if (it instanceof Statement.Work work) {
      String title = language.text(work.title());
      return work.placed()
          ? language.own(Phrase.WORK_AT, title, PlaceWords.joined(work.places()))
          : title;
    }
    return before(it);
  }

  /** What has to be done the evening before. */
  private String before(Statement it) {
    if (it instanceof Statement.SoakThreads soak) {
      return language.own(Phrase.SOAK_THREADS, things(soak.fasteners()));
    } else if (it instanceof Statement.SoakSeats soak) {
      return language.own(Phrase.SOAK_SEATS, things(soak.parts()));
    } else if (it instanceof Statement.Borrow borrow) {
      return language.own(Phrase.BORROW, text(borrow.tool()));
    } else if (it instanceof Statement.Socket socket) {
      return socket
          .line()
          .orAdapter()
          .map(tool -> language.own(Phrase.OR_ADAPTER, socket(socket.line()), language.text(tool)))
          .orElseGet(() -> socket(socket.line()));
    } else if (it instanceof Statement.WrenchFor wrench) {
      return language.own(Phrase.WRENCH_FOR, wrench(wrench), wrench.row().n());
    } else if (it instanceof Statement.FindTorque find) {
      return language.own(Phrase.FIND_TORQUE, fasteners(find.row()), find.row().n());
    } else if (it instanceof Statement.AskTorque ask) {
      return language.own(Phrase.ASK_TORQUE, fasteners(ask.row()), ask.row().n());
    } else if (it instanceof Statement.FindFigure find) {
      return language.own(Phrase.FIND_FIGURE, figure(find.figure()), find.step());
    }
    return figures(it);
  }

  /** What is checked and written in. */
  private String figures(Statement it) {
    if (it instanceof Statement.OfRows of) {
      return ofRows(of, String::valueOf);
    } else if (it instanceof Statement.TorqueRecorded recorded) {
      return torqueRecorded(recorded.row(), String.valueOf(recorded.row().n()));
    } else if (it instanceof Statement.FigureRecorded recorded) {
      return language.own(Phrase.FIGURE_RECORDED, figure(recorded.figure()));
    } else if (it instanceof Statement.Recheck recheck) {
      String words = fasteners(recheck.row());
      int n = recheck.row().n();
      return recheck
          .distance()
          .map(distance -> language.own(Phrase.RECHECK, words, n, distance.print()))
          .orElseGet(() -> language.own(Phrase.RECHECK_UNKNOWN, words, n));
    } else if (it instanceof Statement.FromData figure) {
      return language.own(Phrase.FROM_DATA, language.text(figure.figure()));
    } else if (it instanceof Statement.MissingFromData missing) {
      return language.own(Phrase.FROM_DATA, figure(missing.figure()));
    } else if (it instanceof Statement.Fluid fluid) {
      return fluid(fluid.fluid());
    } else if (it instanceof Statement.FluidAsRecorded fluid) {
      return language.own(Phrase.AS_RECORDED, language.text(Phrases.spaced(fluid.name())));
    }
    return remarks(it);
  }

  /** What is wrong with a torque line, where the vehicle rests, and where a figure comes from. */
  private String remarks(Statement it) {
    if (it instanceof Statement.Uncalibrated wrenches) {
      return uncalibrated(wrenches);
    } else if (it instanceof Statement.WiderThanBand wide) {
      return language.own(Phrase.WIDER_THAN_BAND, wide.wrench());
    } else if (it instanceof Statement.UndeclaredProduct undeclared) {
      return language.own(Phrase.UNDECLARED_PRODUCT, undeclared.product());
    } else if (it instanceof Statement.Lift lift) {
      return language.own(Phrase.ON_LIFT, language.text(lift.description()));
    } else if (it instanceof Statement.Stands stands) {
      return language.own(Phrase.ON_STANDS, stands.count());
    } else if (it instanceof Statement.JackUnder jack) {
      return language.own(Phrase.JACK_UNDER, language.text(jack.point()));
    } else if (it instanceof Statement.StandsUnder stands) {
      return language.own(Phrase.STANDS_UNDER, language.text(stands.point()));
    } else if (it instanceof Statement.CarriedAt carried) {
      return PlaceWords.words(carried.axle()) + ": " + language.text(carried.point());
    } else if (it instanceof Statement.OfProcedure procedure) {
      return language.own(Phrase.OF_PROCEDURE, procedure.name());
    } else if (it instanceof Statement.Checked checked) {
      return checked(checked);
    }
    throw new IllegalArgumentException("no sentence for " + it);
  }

  /**
   * The check that a figure is found before anything is opened.
   *
   * @param where the number of the row, and of its sheet where that is another one
   */
  String torqueRecorded(Statement.Row row, String where) {
    String words = language.own(Phrase.STATE_ROW, fasteners(row), where);
    return language.own(Phrase.TORQUE_RECORDED, words);
  }

  /**
   * What somebody wrote, with the rows that it is about.
   *
   * @param where the number of a row, and of its sheet where that is another one
   */
  String ofRows(Statement.OfRows of, IntFunction<String> where) {
    String rows = of.rows().stream().map(where::apply).collect(Collectors.joining("; "));
    return language.own(Phrase.STATE_ROW, language.text(of.text()), rows);
  }

  private String checked(Statement.Checked checked) {
    return checked
        .book()
        .map(book -> language.own(Phrase.NAMED_BOOK_CHECKED, book, checked.by(), checked.on()))
        .orElseGet(() -> language.own(Phrase.BOOK_CHECKED, checked.by(), checked.on()));
  }

  private String things(List<Statement.Things> things) {
    return things.stream().map(this::things).collect(Collectors.joining(", "));
  }

  private String things(Statement.Things things) {
    return "%s (%s)"
        .formatted(
            String.join(", ", language.texts(things.words())), PlaceWords.joined(things.places()));
  }

  /** What to ask a neighbour for: {@code torque wrench for 27 N·m, 3/8 in}. */
  String wrench(Statement.WrenchFor wrench) {
    String asked =
        Stream.concat(wrench.torques().stream(), wrench.drive().map(Drive::print).stream())
            .collect(Collectors.joining(", "));
    return language.own(Phrase.TORQUE_WRENCH, asked);
  }

  private static String socket(Sheet.SocketLine socket) {
    String points = socket.points() > 0 ? ", " + socket.points() + "-point" : "";
    return socket.head().print()
        + " socket, "
        + socket.drive().print()
        + points
        + (socket.impact() ? ", impact" : "")
        + (socket.deep() ? ", deep" : "");
  }

  private String fasteners(Statement.Row row) {
    return plural(lower(language.text(row.words())), row.count());
  }

  /** What it is called. */
  String figure(MissingFigure figure) {
    if (figure instanceof MissingFigure.OfFluid fluid) {
      return language.text(Phrases.spaced(fluid.fluid()))
          + " "
          + fluid.lacking().stream()
              .map(property -> language.own(Phrase.valueOf(property.name())))
              .collect(Collectors.joining(" and "));
    }
    MissingFigure.Point point = (MissingFigure.Point) figure;
    return language.own(
        point.jacking() ? Phrase.JACKING_POINT : Phrase.SUPPORT_POINTS,
        PlaceWords.words(point.axle()));
  }

  private String fluid(Detail.Fluid fluid) {
    StringBuilder text = new StringBuilder(language.text(Phrases.spaced(fluid.name())));
    fluid.grade().ifPresent(grade -> text.append(' ').append(language.text(grade)));
    fluid.capacity().map(Quantity::print).ifPresent(it -> text.append(", ").append(it));
    return text.toString();
  }

  private String uncalibrated(Statement.Uncalibrated wrenches) {
    List<String> parts = new ArrayList<>();
    if (!wrenches.lapsed().isEmpty()) {
      parts.add(language.own(Phrase.LAPSED, overdue(wrenches.lapsed())));
    }
    if (!wrenches.later().isEmpty()) {
      parts.add(language.own(Phrase.CALIBRATED_LATER, later(wrenches.later())));
    }
    return language.own(Phrase.UNCALIBRATED, String.join("; ", parts));
  }

  private String overdue(List<Statement.Calibrated> wrenches) {
    return wrenches.stream()
        .map(it -> language.own(Phrase.WAS_DUE, it.wrench(), it.due()))
        .collect(Collectors.joining(", "));
  }

  private String later(List<Statement.Calibrated> wrenches) {
    return wrenches.stream()
        .map(it -> language.own(Phrase.CALIBRATED_ON, it.wrench(), it.on()))
        .collect(Collectors.joining(", "));
  }

  /** The word for one or for several. */
  static String plural(String word, int count) {
    return count == 1 || word.endsWith("s") ? word : word + "s";
  }

  static String lower(String words) {
    int end = words.offsetByCodePoints(0, words.isEmpty() ? 0 : 1);
    return words.substring(0, end).toLowerCase(Locale.ROOT) + words.substring(end);
  }

  static String at(String words, List<Place> places) {
    return words + " (" + PlaceWords.joined(places) + ")";
  }
}
