package baysheet.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;

/** Where the program starts. */
public final class Main {
  private static final Pattern LONG_DASH = Pattern.compile("^[\u2010-\u2015\u2212]+(\\p{L})");

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
    CommandSpec alone = new NoCommand(console, today).spec;
    CommandLine line = new CommandLine(alone);
    commands(called, console, today)
        .forEach(command -> alone.addSubcommand(command.name(), command));
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

  /** The called one alone, for reading the options of all takes longer than planning a sheet. */
  private static List<CommandSpec> commands(
      String called, Console console, Supplier<LocalDate> today) {
    return switch (called) {
      case "sheets" -> List.of(new SheetsCommand(console, today, Startup.start()).spec());
      case "check" -> List.of(new CheckCommand(console).spec());
      case DayCommand.NAME -> List.of(new DayCommand(console, today).spec());
      case "carry" -> List.of(new CarryCommand(console, today).spec());
      case "withdraw" -> List.of(new WithdrawCommand(console, today).spec());
      case "explain" -> List.of(new ExplainCommand(console).spec());
      case "torque" -> List.of(new TorqueCommand(console, today).spec());
      case "names" -> List.of(new NamesCommand(console).spec());
      case "procedures" -> List.of(new ProceduresCommand(console).spec());
      case "draft" -> List.of(new DraftCommand(console).spec());
      case "start" -> List.of(new StartCommand(console, today).spec());
      case "collect" -> List.of(new CollectCommand(console, today).spec());
      case "close" -> List.of(new CloseCommand(console, today).spec());
      case "attach" -> List.of(new AttachCommand(console, today).spec());
      case "history" -> List.of(new HistoryCommand(console).spec());
      case "due" -> List.of(new DueCommand(console, today).spec());
      case "recall" -> List.of(new RecallCommand(console).spec());
      case "forget" -> List.of(new ForgetCommand(console, today).spec());
      default ->
          List.of(
              new SheetsCommand(console, today, Startup.start()).spec(),
              new CheckCommand(console).spec(),
              new DayCommand(console, today).spec(),
              new ExplainCommand(console).spec(),
              new TorqueCommand(console, today).spec(),
              new StartCommand(console, today).spec(),
              new NamesCommand(console).spec(),
              new ProceduresCommand(console).spec(),
              new DraftCommand(console).spec(),
              new CollectCommand(console, today).spec(),
              new CloseCommand(console, today).spec(),
              new AttachCommand(console, today).spec(),
              new CarryCommand(console, today).spec(),
              new WithdrawCommand(console, today).spec(),
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
    console.err().print(WrongCommandLine.print(wrong));
    console.err().flush();
    return Exit.USAGE;
  }

  /** The name of the program without a command behind it. */
  private static final class NoCommand implements Callable<Integer> {
    private final Console console;
    private final Supplier<LocalDate> today;
    private final CommandSpec spec =
        Options.command(
            "baysheet", "Turns a garage's job files into one-page bay sheets.", this, List.of());

    NoCommand(Console console, Supplier<LocalDate> today) {
      this.console = console;
      this.today = today;
    }

    @Override
    public Integer call() {
      console.print(new NextStep(ShopFolders.here(), today).text());
      return Exit.DONE;
    }
  }
}
