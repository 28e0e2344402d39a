package baysheet.cli;

import baysheet.files.ShopFolders;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.Targets;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;

/** Where the program starts. */
public final class Main {
  private static final Pattern LONG_DASH = Pattern.compile("^[\u2010-\u2015\u2212]+(\\p{L})");

  private static final String HELP = "help";

  /** In the order of the help. */
  private static final List<String> COMMANDS =
      List.of(
          "sheets",
          "check",
          Targets.DAY,
          "explain",
          "torque",
          "start",
          "names",
          "procedures",
          "draft",
          "collect",
          "close",
          "attach",
          "carry",
          "withdraw",
          "history",
          "due",
          "recall",
          "forget",
          HELP);

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
    CommandLine line = commandLine(arguments.length == 0 ? "" : arguments[0], console, today);
    Optional<WrongCommandLine> dash = longDash(arguments, line);
    return written(
        dash.map(it -> misused(it, console)).orElseGet(() -> line.execute(arguments)), console);
  }

  /**
   * The program, ready to run.
   *
   * @param called the command that is asked for; without one, all are there
   */
  static CommandLine commandLine(String called, Console console, Supplier<LocalDate> today) {
    CommandSpec alone = new NoCommand(console, today).spec();
    CommandLine line = new CommandLine(alone);
    // The called one alone, for reading the options of all takes longer than planning a sheet.
    boolean isOne = COMMANDS.contains(called) && !called.equals(HELP);
    for (String name : isOne ? List.of(called) : COMMANDS) {
      alone.addSubcommand(name, command(name, console, today).spec());
    }
    line.setOut(console.out());
    line.setErr(console.err());
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(console.coloured() ? Ansi.ON : Ansi.OFF));
    // "-out DIR" is a slip for --out, not -o with the folder "ut"; and @ may begin a file's name.
    line.setPosixClusteredShortOptionsAllowed(false).setExpandAtFiles(false);
    line.registerConverter(Path.class, Main::path);
    line.setExecutionExceptionHandler((fault, command, result) -> failed(fault, console));
    line.setParameterExceptionHandler((wrong, given) -> misused(wrong, console));
    return line;
  }

  /** A word processor makes a long dash of two hyphens; it would be taken for a file's name. */
  private static Optional<WrongCommandLine> longDash(String[] arguments, CommandLine line) {
    return Stream.of(arguments)
        .takeWhile(argument -> !argument.equals("--"))
        .filter(argument -> LONG_DASH.matcher(argument).find())
        .findFirst()
        .map(
            slip ->
                new WrongCommandLine(line, '"' + slip + "\" begins with a dash that is no hyphen")
                    .expecting(
                        "an option such as " + LONG_DASH.matcher(slip).replaceFirst("--$1")));
  }

  /** An empty path would be taken for the folder in which the program runs. */
  private static Path path(String written) {
    if (written.isBlank()) {
      throw new CommandLine.TypeConversionException("a path is empty");
    }
    return Path.of(written);
  }

  /** Output that did not reach its file or terminal is a failure, whatever it says. */
  private static int written(int exit, Console console) {
    boolean lost = console.out().checkError();
    if (lost) {
      console.complain("the output could not be written in full");
    }
    return (lost || console.err().checkError()) && exit != Exit.FAULT ? Exit.FILES : exit;
  }

  private static Command command(String name, Console console, Supplier<LocalDate> today) {
    return switch (name) {
      case "sheets" -> new SheetsCommand(console, today, Startup.start());
      case "check" -> new CheckCommand(console, today);
      case Targets.DAY -> new DayCommand(console, today);
      case "explain" -> new ExplainCommand(console, today);
      case "torque" -> new TorqueCommand(console, today);
      case "start" -> new StartCommand(console, today);
      case "names" -> new NamesCommand(console);
      case "procedures" -> new ProceduresCommand(console);
      case "draft" -> new DraftCommand(console, today);
      case "collect" -> new CollectCommand(console, today);
      case "close" -> new CloseCommand(console, today);
      case "attach" -> new AttachCommand(console, today);
      case "carry" -> new CarryCommand(console, today);
      case "withdraw" -> new WithdrawCommand(console, today);
      case "history" -> new HistoryCommand(console);
      case "due" -> new DueCommand(console, today);
      case "recall" -> new RecallCommand(console);
      case "forget" -> new ForgetCommand(console, today);
      case HELP -> new HelpCommand(console);
      default -> throw new IllegalArgumentException("there is no command " + name);
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
    console.err().print(WrongCommandLine.print(wrong));
    console.err().flush();
    return Exit.USAGE;
  }

  /** The name of the program without a command behind it. */
  private static final class NoCommand extends Command {
    private final Supplier<LocalDate> today;

    NoCommand(Console console, Supplier<LocalDate> today) {
      super(console, "baysheet", "Turns a garage's job files into one-page bay sheets.");
      this.today = today;
    }

    @Override
    public Integer call() {
      console.print(new NextStep(ShopFolders.here(), today).text());
      return Exit.DONE;
    }
  }
}
