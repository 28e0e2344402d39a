package baysheet.cli;

import baysheet.ledger.Recall;
import baysheet.output.Console;
import baysheet.torque.ParseFailure;
import baysheet.torque.ParseResult;
import baysheet.torque.Parsed;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that lists the joints that were tightened with a wrench that was found bad. */
final class RecallCommand extends LedgerCommand {
  private static final Pattern ERROR = Pattern.compile("([+-][0-9]{1,2}(?:\\.[0-9]{1,3})?) ?%");

  private final PositionalParamSpec wrench =
      at(0, "WRENCH", "1", String.class, "The wrench's name in the shop file.");

  private final OptionSpec from =
      option("--from", "DATE", String.class, "The first day of the jobs to look at.");

  private final OptionSpec to =
      option("--to", "DATE", String.class, "The last day of the jobs to look at.");

  private final OptionSpec error =
      option(
          "--error",
          "PERCENT",
          String.class,
          "How much more (+8%%) or less (-8%%) the wrench was found to give than its scale shows."
              + " Without it every joint is rated unknown.");

  private final OptionSpec json = json();

  RecallCommand(Console console) {
    super(
        console,
        "recall",
        "List every joint that was tightened with a wrench, by vehicle, rated by the error that"
            + " was found.");
  }

  @Override
  public Integer call() {
    OptionParser typed = new OptionParser(line());
    LocalDate first = day(typed, from);
    LocalDate last = day(typed, to);
    if (last.isBefore(first)) {
      throw typed.wrong("--to is before --from");
    }
    Optional<BigDecimal> percent = typed.word(error, RecallCommand::percent);
    Recall recall = new Recall(wrench.getValue(), first, last, percent);
    Map<String, Object> about = new LinkedHashMap<>();
    about.put("wrench", recall.wrench());
    about.put("from", first.toString());
    about.put("to", last.toString());
    percent.ifPresent(it -> about.put("errorPercent", it));
    int exit =
        answer(
            Options.isGiven(json),
            about,
            index -> Recall.table(recall.joints(index), index),
            "no joint was tightened with " + recall.wrench() + " in that time");
    if (percent.isPresent() && !Options.isGiven(json)) {
      console.say(
          "REACHED is the figure read, times %s: the wrench gave %s %% %s than its scale showed"
              .formatted(
                  BigDecimal.ONE
                      .add(percent.get().movePointLeft(2))
                      .stripTrailingZeros()
                      .toPlainString(),
                  percent.get().abs().toPlainString(),
                  percent.get().signum() < 0 ? "less" : "more"));
    }
    return exit;
  }

  private static LocalDate day(OptionParser typed, OptionSpec option) {
    return typed
        .word(option, IsoDate::parse)
        .orElseThrow(() -> typed.wrong("recall needs " + option.longestName() + " DATE"));
  }

  private static ParseResult<BigDecimal> percent(String text) {
    Matcher error = ERROR.matcher(text.strip().replace('−', '-'));
    return error.matches()
        ? new Parsed<>(new BigDecimal(error.group(1)))
        : new ParseFailure<>(
            '"' + text + "\" is no error of a wrench", "percent with a sign, such as +8%");
  }
}
