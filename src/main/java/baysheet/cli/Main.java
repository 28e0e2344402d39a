package baysheet.cli;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs the command line. */
  public static void main(String[] arguments) {}
}
