package baysheet.cli;

import java.util.List;
import java.util.Map;

/** How each command is typed, for its help and the manual page. */
final class Examples {
  private static final Map<String, List<String>> BY_COMMAND =
      Map.ofEntries(
          Map.entry(
              "sheets",
              List.of(
                  "baysheet sheets",
                  "baysheet sheets my-garage/2026-03-02",
                  "baysheet sheets my-garage/2026-03-02/1002.yaml -o /tmp/sheets")),
          Map.entry(
              "check",
              List.of("baysheet check my-garage", "baysheet check my-garage/2026-03-02/1002.yaml")),
          Map.entry("explain", List.of("baysheet explain 1002", "baysheet explain 1002 3")),
          Map.entry(
              "torque",
              List.of(
                  "baysheet torque 110 N·m --thread M12x1.5 --class 10.9 --shop my-garage",
                  "baysheet torque \"25 N·m, 50 N·m, +90°\"")),
          Map.entry("start", List.of("baysheet start my-garage")),
          Map.entry(
              "names",
              List.of("baysheet names traits states", "baysheet names items --shop my-garage")),
          Map.entry(
              "procedures",
              List.of("baysheet procedures", "baysheet procedures --vehicle our-van-2016")),
          Map.entry(
              "draft",
              List.of(
                  "baysheet draft our-van-2016 --for discs-and-pads@front wheel-bearing@rear",
                  "baysheet draft --job 1002",
                  "baysheet draft our-van-2016 --table torques.csv")),
          Map.entry(
              "day", List.of("baysheet day tomorrow", "baysheet day 2026-03-02 --parts parts.csv")),
          Map.entry(
              "carry",
              List.of("baysheet carry 2402 tomorrow --step 12 --found \"left boot is cracked\"")),
          Map.entry("withdraw", List.of("baysheet withdraw 2402")),
          Map.entry("collect", List.of("baysheet collect stack.pdf")),
          Map.entry(
              "attach",
              List.of(
                  "baysheet attach 2402 --invoice INVOICE.pdf",
                  "baysheet attach 2402 --invoice INVOICE.pdf --how embed")),
          Map.entry(
              "close", List.of("baysheet close 2404 --by T1", "baysheet close 2402-2 --by T1")),
          Map.entry(
              "history", List.of("baysheet history \"RD 08-553\"", "baysheet history 2402 --json")),
          Map.entry(
              "due", List.of("baysheet due --by 2026-03-31 --odometer \"RD 08-553=143000 km\"")),
          Map.entry(
              "recall",
              List.of("baysheet recall W3 --from 2026-01-15 --to 2026-03-20 --error +8%")),
          Map.entry("forget", List.of("baysheet forget --before 2023-01-01")),
          Map.entry("help", List.of("baysheet help sheets", "baysheet help missing-fastener")));

  private Examples() {}

  /** The lines of a command. */
  static List<String> of(String command) {
    return BY_COMMAND.getOrDefault(command, List.of());
  }
}
