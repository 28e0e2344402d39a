package baysheet.cli;

import baysheet.ledger.Due;
import baysheet.output.Console;
import baysheet.torque.Dimension;
import baysheet.torque.Quantity;
import baysheet.torque.QuantityText;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine.Model.OptionSpec;

/** The command that shows what is still to be done. */
final class DueCommand extends LedgerCommand {
  private final Supplier<LocalDate> today;

  private final OptionSpec by =
      option("--by", "DATE", String.class, "Look at jobs up to this day (default: today).");

  private final OptionSpec odometers =
      add(
          OptionSpec.builder("--odometer")
              .paramLabel("PLATE=KM")
              .type(List.class)
              .auxiliaryTypes(String.class)
              .arity("1")
              .description(
                  "What a vehicle's odometer shows now, such as \"RD 08-553=143000 km\"; re-checks"
                      + " that are not due yet are left out. May be given several times.")
              .build());

  private final OptionSpec json = json();

  DueCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "due",
        "List re-checks that are due, what others must still do, and sheets that are not"
            + " closed.");
    this.today = today;
  }

  @Override
  public Integer call() {
    OptionParser typed = new OptionParser(line());
    LocalDate day = typed.word(by, IsoDate::parse).orElseGet(today);
    Map<String, Quantity> readings = new LinkedHashMap<>();
    for (String text : Options.<String>all(odometers)) {
      int sign = text.lastIndexOf('=');
      if (sign < 1) {
        throw typed.wrong("--odometer takes PLATE=KM, not \"" + text + "\"");
      }
      String figure = text.substring(sign + 1).strip();
      // The label of the option names the unit.
      String reading = figure.matches("[0-9]+") ? figure + " km" : figure;
      readings.put(
          text.substring(0, sign), typed.read(QuantityText.quantity(reading, Dimension.DISTANCE)));
    }
    Due due = new Due(day, readings);
    return answer(
        Options.isGiven(json),
        Map.of("by", day.toString()),
        index -> Due.table(due.items(index), index),
        "nothing is due");
  }
}
