package baysheet.cli;

import baysheet.output.Exit;
import baysheet.output.Console;
import java.io.PrintWriter;
import java.io.Writer;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;

/**
 * Runs one command line again and again in one process and prints the seconds of each run: what the
 * tool does once the machine's compiler is done with it. It stands in this package for the way in
 * that takes a console.
 */
public final class Rounds {
  private Rounds() {}

  /**
   * Runs the rounds.
   *
   * @param arguments how many, then the command line
   * @throws IllegalStateException when a run does not end well
   */
  public static void main(String[] arguments) {
    String[] line = Arrays.copyOfRange(arguments, 1, arguments.length);
    for (int round = 0; round < Integer.parseInt(arguments[0]); round++) {
      PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
      long start = System.nanoTime();
      int exit = Main.run(line, new Console(nowhere, nowhere, false), LocalDate::now);
      double seconds = (System.nanoTime() - start) / 1e9;
      if (exit != Exit.DONE) {
        throw new IllegalStateException("round " + round + " ended with " + exit);
      }
      System.out.println(String.format(Locale.ROOT, "%.3f", seconds));
    }
  }
}
