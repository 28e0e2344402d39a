package baysheet.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;

/** Where the program starts. */
public final class Main {
  private Main() {}

  /** Runs the command line and leaves with its exit code. */
  public static void main(String[] arguments) {
    boolean colour = System.console() != null && System.getenv("NO_COLOR") == null;
    Console console =
        new Console(
            utf8(System.out), utf8(System.err), colour, System.getenv(Console.TRACE) != null);
    Optional<String> lost =
        TerminalEncoding.ofThisMachine()
            .complaint(List.of(arguments), System.getProperty("user.dir", ""));
    lost.ifPresent(console::complain);
    System.exit(lost.isPresent() ? Exit.USAGE : run(arguments, console, LocalDate::now));
  }

  private static PrintWriter utf8(PrintStream stream) {
    return new PrintWriter(stream, true, StandardCharsets.UTF_8);
  }

  /**
   * Runs a command line; tests come in here.
   *
   * @param today asked only where a command needs it: the rules of time zones take long to load
   */
  static int run(String[] arguments, Console console, Supplier<LocalDate> today) {
    String called = arguments.length == 0 ? "" : arguments[0];
    List<CommandSpec> commands = commands(called, console, today);
    CommandSpec alone = new NoCommand().spec;
    CommandLine line = new CommandLine(alone);
    commands.forEach(command -> alone.addSubcommand(command.name(), command));
    line.setOut(console.out());
    line.setErr(console.err());
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(console.coloured() ? Ansi.ON : Ansi.OFF));
    line.setExecutionExceptionHandler((fault, command, result) -> failed(fault, console));
    line.setParameterExceptionHandler((wrong, given) -> misused(wrong, console));
    return written(line.execute(arguments), console);
  }

  /** Output that did not reach its file or terminal is a failure, whatever it says. */
  private static int written(int exit, Console console) {
    boolean lost = console.out().checkError();
    if (lost) {
      console.complain("the output could not be written in full");
    }
    return (lost || console.err().checkError()) && exit != Exit.FAULT ? Exit.FILES : exit;
  }

  /** The called one alone, for reading the options of all takes longer than planning a sheet. */
  private static List<CommandSpec> commands(
      String called, Console console, Supplier<LocalDate> today) {
    return switch (called) {
      case "sheets" -> List.of(new SheetsCommand(console, today, Ahead.start()).spec());
      case "check" -> List.of(new CheckCommand(console).spec());
      case "explain" -> List.of(new ExplainCommand(console).spec());
      case "torque" -> List.of(new TorqueCommand(console, today).spec());
      case "names" -> List.of(new NamesCommand(console).spec());
      case "start" -> List.of(new StartCommand(console, today).spec());
      case "close" -> List.of(new CloseCommand(console, today).spec());
      case "history" -> List.of(new HistoryCommand(console).spec());
      case "due" -> List.of(new DueCommand(console, today).spec());
      case "recall" -> List.of(new RecallCommand(console).spec());
      case "forget" -> List.of(new ForgetCommand(console, today).spec());
      default ->
          List.of(
              new SheetsCommand(console, today, Ahead.start()).spec(),
              new CheckCommand(console).spec(),
              new ExplainCommand(console).spec(),
              new TorqueCommand(console, today).spec(),
              new StartCommand(console, today).spec(),
              new NamesCommand(console).spec(),
              new CloseCommand(console, today).spec(),
              new HistoryCommand(console).spec(),
              new DueCommand(console, today).spec(),
              new RecallCommand(console).spec(),
              new ForgetCommand(console, today).spec(),
              new HelpCommand(console).spec());
    };
  }

  /**
   * A file that cannot be read or written is reported in one line; anything else is an internal
   * error.
   */
  private static int failed(Exception fault, Console console) {
    if (fault instanceof UncheckedIOException files) {
      console.complain(files);
      return Exit.FILES;
    }
    console.complain("an internal error stopped the command; your files are not the cause");
    console.trace(fault);
    return Exit.FAULT;
  }

  private static int misused(CommandLine.ParameterException wrong, Console console) {
    String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
    console.complain(wrong.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(wrong, console.err());
    console.complain("the options are listed by: " + command + " --help");
    return Exit.USAGE;
  }

  /** The name of the program without a command behind it. */
  private static final class NoCommand implements Callable<Integer> {
    private final CommandSpec spec =
        Options.command(
            "baysheet", "Turns a garage's job files into one-page bay sheets.", this, List.of());

    @Override
    public Integer call() {
      throw new CommandLine.ParameterException(spec.commandLine(), "a command is missing");
    }
  }
}
