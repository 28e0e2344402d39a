package baysheet.wording;

import baysheet.books.Catalogue;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Detail;
import baysheet.sheet.Name;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.Phase;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import baysheet.sheet.Teaching;
import baysheet.sheet.TorqueLine.StageLine;
import baysheet.torque.Band;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.ThreePoint;
import baysheet.torque.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Short ways to write the lines of a sheet down in tests. */
public final class SampleLines {
  private SampleLines() {}

  public static Quantity newtonMetres(String figure) {
    return Quantity.of(figure, Unit.NEWTON_METRE);
  }

  /** A torque of the book without a band of its own; the wrench is set to the same figure. */
  public static StageLine torque(String figure, String second, String wrench) {
    return torque(figure, second, wrench, "0.05", Band.Origin.SHOP);
  }

  public static StageLine torque(
      String figure, String second, String wrench, String share, Band.Origin origin) {
    Quantity target = newtonMetres(figure);
    BigDecimal part = new BigDecimal(share);
    Band band =
        new Band(
            target.times(BigDecimal.ONE.subtract(part)),
            target.times(BigDecimal.ONE.add(part)),
            origin);
    return new StageLine.Torque(
        target,
        target.print(),
        Optional.of(Quantity.of(second, Unit.POUND_FORCE_FOOT)),
        band,
        Optional.empty(),
        Optional.of(wrench),
        Optional.of(target),
        Optional.of(target),
        true,
        Optional.empty());
  }

  public static StageLine turn(String degrees) {
    return new StageLine.Angle(Quantity.of(degrees, Unit.DEGREE));
  }

  static Head head(String text) {
    return Head.parse(text).found().orElseThrow();
  }

  static Drive drive(String text) {
    return Drive.parse(text).found().orElseThrow();
  }

  static Sheet.SocketLine socket(
      String drive, String head, boolean deep, int count, int firstStep, boolean owned) {
    Head form = head(head);
    int points = form.form() == Head.Form.TWELVE_POINT ? 12 : 6;
    return new Sheet.SocketLine(
        drive(drive),
        form,
        points,
        false,
        deep,
        count,
        firstStep,
        owned,
        Optional.empty(),
        Optional.empty());
  }

  /** A caution at steps, or of the whole job where there are none. */
  public static CautionLine caution(
      String letter,
      String signal,
      String command,
      String hazard,
      String consequence,
      List<String> protect,
      Integer... steps) {
    return new CautionLine(
        letter,
        "caution-" + letter,
        Catalogue.Signal.valueOf(signal),
        new CautionLine.Text(command, hazard, consequence),
        protect,
        "common practice, no source",
        List.of(steps),
        new CautionLine.Shown(steps.length == 0, steps.length == 0, false),
        Optional.empty());
  }

  public static CheckLine check(Moment moment, String text, Integer... because) {
    return check(moment, text, "", false, "", "", because);
  }

  public static CheckLine check(
      Moment moment,
      String text,
      String reason,
      boolean hold,
      String needs,
      String keepsOpen,
      Integer... because) {
    return new CheckLine(
        "check",
        moment,
        new Statement.Written(text),
        List.of(),
        List.of(because),
        List.of(),
        some(reason).map(Statement.Written::new),
        hold,
        some(needs),
        some(keepsOpen),
        Optional.empty(),
        new Statement.Written("common practice, no source"));
  }

  /** As somebody wrote them in a file. */
  static List<Statement> written(String... texts) {
    return Stream.of(texts).<Statement>map(Statement.Written::new).toList();
  }

  public static Optional<String> some(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /** Writes a step down; what is not said is absent. */
  public static final class StepMaker {
    private final int n;
    private final String text;
    private final List<Detail> details = new ArrayList<>();
    private List<Integer> torque = List.of();
    private List<String> letters = List.of();
    private List<String> above = List.of();
    private ThreePoint minutes = new ThreePoint(1, 2, 3);
    private boolean hold;
    private String because = "";
    private String good = "";
    private List<String> stuck = List.of();

    public StepMaker(int n, String text) {
      this.n = n;
      this.text = text;
    }

    public StepMaker tools(String... names) {
      return detail(new Detail.Tools(List.of(names)));
    }

    public StepMaker detail(Detail detail) {
      details.add(detail);
      return this;
    }

    public StepMaker torque(Integer... lines) {
      torque = List.of(lines);
      return this;
    }

    public StepMaker above(String... caution) {
      above = List.of(caution);
      letters = above;
      return this;
    }

    public StepMaker letters(String... caution) {
      letters = List.of(caution);
      return this;
    }

    public StepMaker minutes(double low, double likely, double high) {
      minutes = new ThreePoint(low, likely, high);
      return this;
    }

    public StepMaker hold() {
      hold = true;
      return this;
    }

    public StepMaker why(String reason) {
      because = reason;
      return this;
    }

    public StepMaker good(String sign) {
      good = sign;
      return this;
    }

    public StepMaker stuck(String... ways) {
      stuck = List.of(ways);
      return this;
    }

    public SheetStep at(Phase phase, Moment moment, List<Place> places) {
      return from(source(phase), moment, places);
    }

    public SheetStep from(StepSource source, Moment moment, List<Place> places) {
      return new SheetStep(
          n,
          source,
          "procedure",
          new Sheet.Where(moment, moment == Moment.RAISED ? Height.WORKING : Height.GROUND, places),
          new Sheet.Actions(List.of(), List.of(), List.of(), List.of(), List.of(), torque),
          details,
          new Sheet.Letters(letters, above),
          minutes,
          hold,
          List.of(),
          new Teaching(some(because), some(good).map(Statement.Written::new), stuck));
    }

    private StepSource source(Phase phase) {
      return switch (phase) {
        case CHECK -> new StepSource.Check("rule", text);
        case FINAL -> new StepSource.FinalTorque("nut", new Name(text, text), 1);
        default -> new StepSource.Written(new StepSource.WrittenAt("procedure", phase, n), text);
      };
    }
  }
}
