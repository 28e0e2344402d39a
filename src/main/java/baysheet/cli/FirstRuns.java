package baysheet.cli;

import baysheet.output.Console;
import baysheet.output.Targets;
import java.io.PrintWriter;
import java.io.Writer;
import java.time.LocalDate;

/**
 * Makes the sheets of two days and lays one of them out, in one process. The launchers run it once,
 * so that the class-data archive holds what both commands load.
 */
final class FirstRuns {
  private FirstRuns() {}

  /**
   * @param arguments both day folders, and where their files go
   */
  public static void main(String[] arguments) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    String[] sheets = {"sheets", arguments[0], arguments[1], "-o", arguments[2]};
    Main.run(sheets, new Console(nowhere, nowhere, false, false), LocalDate::now);
    Main.main(new String[] {Targets.DAY, arguments[0], "--out", arguments[2]});
  }
}
