package baysheet.output;

import baysheet.books.Job;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.ledger.Index;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.sheet.Heading;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/** What distinguishes a job from all others: a number of its own, and one day. */
record JobIdentity(Job job, Path file, ShopFolders folders, Problems problems) {

  /** Adds a problem when another job has the number, or no job can have it. */
  void checkNumber() {
    Located<String> number = job.number();
    if (number.value().equalsIgnoreCase(Targets.ALL)) {
      problems.add(reserved(Targets.ALL, "holds the sheets of the whole day"));
    }
    if (number.value().equalsIgnoreCase(Targets.DAY)) {
      problems.add(reserved(Targets.DAY, "is the timetable of the day"));
    }
    folders.sameNumber(file).ifPresent(other -> problems.add(twice(number, other)));
  }

  private Problem reserved(String name, String what) {
    return Problem.of(
            ProblemCode.RESERVED_NUMBER,
            job.number().at(),
            "no job can be called \"%s\", because %s.pdf %s"
                .formatted(job.number().value(), name, what))
        .expecting("a number such as 2417");
  }

  private static Problem twice(Located<String> number, Path other) {
    return Problem.of(
            ProblemCode.NUMBER_TWICE,
            number.at(),
            "another job of the shop also has the number " + number.value())
        .expecting("a number that no other job has")
        .seeAlso("the other job", new Source(YamlFiles.shown(other), "").whole());
  }

  /** The day of the job: its own, or the one that its folder is named after. */
  Optional<LocalDate> date() {
    Optional<LocalDate> own = job.date().map(Located::value);
    Optional<LocalDate> folder = DayFolders.date(file.toAbsolutePath().getParent());
    if (own.isPresent() && folder.isPresent() && !own.equals(folder)) {
      problems.add(
          Problem.of(
                  ProblemCode.DATE_DIFFERS,
                  job.date().get().at(),
                  "the date is %s, but the file is in the folder of %s"
                      .formatted(own.get(), folder.get()))
              .expecting("date: " + folder.get() + ", or no date, or the file in another folder"));
      return Optional.empty();
    }
    if (own.isEmpty() && folder.isEmpty()) {
      problems.add(noDate());
    }
    return own.or(() -> folder);
  }

  private Problem noDate() {
    String day = DayFolders.day(file);
    return Problem.of(
            ProblemCode.NO_DATE,
            job.number().at(),
            "the job has no date, and its folder \"" + day + "\" is not named after a day")
        .expecting("date: 2026-03-02, or a folder named so");
  }

  /** What is wrong with a job that says it goes on from a sheet; empty where nothing is. */
  static Optional<Problem> denied(Path job, Heading heading, Index index) {
    return heading
        .before()
        .carried()
        .flatMap(it -> index.denies(heading.job(), it.from(), it.sheet(), it.step()))
        .map(
            why ->
                Problem.of(
                        ProblemCode.NOT_ISSUED,
                        new Source(YamlFiles.shown(job), "").whole(),
                        "carried: " + why)
                    .expecting("the sheet that the work stopped on, as its header has it"));
  }
}
