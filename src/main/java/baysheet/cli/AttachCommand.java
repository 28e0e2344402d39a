package baysheet.cli;

import baysheet.collect.CollectedForms;
import baysheet.collect.Collecting;
import baysheet.collect.SignedPages;
import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.ledger.Event;
import baysheet.ledger.Event.Attached;
import baysheet.ledger.Hash;
import baysheet.ledger.Index;
import baysheet.ledger.Ledger;
import baysheet.ledger.PersonalFiles.Note;
import baysheet.ledger.SheetStory;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.OutFiles;
import baysheet.pdf.Attachment;
import baysheet.pdf.Attachment.Relationship;
import baysheet.pdf.Invoice;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that puts a signed sheet with its invoice. */
final class AttachCommand extends LedgerCommand {
  /** As many characters fit on the line above a page. */
  private static final int LONGEST_REASON = 90;

  private final Supplier<LocalDate> today;

  private final PositionalParamSpec job = at(0, "JOB", "1", String.class, "The number of the job.");

  private final OptionSpec invoice =
      option("--invoice", "FILE", Path.class, "The invoice, a PDF; it is never changed.");

  private final OptionSpec how =
      option(
          "--how",
          "append|embed|reference",
          String.class,
          "append: the signed page behind the invoice's pages (default); embed: sheet and record as"
              + " attached files; reference: XML for an electronic invoice.");

  private final OptionSpec to =
      option(
          "--to",
          "FILE",
          Path.class,
          "The file to write (default: beside the invoice, with the job behind its name).");

  private final OptionSpec incomplete =
      option(
          "--incomplete",
          "REASON",
          String.class,
          "Attach a sheet that is not closed; the reason is printed above the page and kept.");

  private final OptionSpec anyway =
      option(
          "--anyway",
          "REASON",
          String.class,
          "Attach to an invoice that names neither the job nor the plate; the reason is kept.");

  AttachCommand(Console console, Supplier<LocalDate> today) {
    super(console, "attach", "Put the signed sheet of a job with its invoice, in a new file.");
    this.today = today;
  }

  /** What can be done with a sheet and an invoice. */
  private enum How {
    APPEND(".pdf"),
    EMBED(".pdf"),
    REFERENCE(".xml");

    private final String ending;

    How(String ending) {
      this.ending = ending;
    }

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @Override
  public Integer call() {
    Console.muteRemarksOnFonts();
    OptionParser typed = new OptionParser(line());
    Path from =
        Options.<Path>given(invoice).orElseThrow(() -> typed.wrong("attach needs --invoice FILE"));
    How kind = how(typed);
    for (OptionSpec reason : List.of(incomplete, anyway)) {
      Options.<String>given(reason)
          .filter(it -> it.isBlank() || it.length() > LONGEST_REASON)
          .ifPresent(
              it -> {
                throw typed.wrong(
                    reason.longestName()
                        + " takes a reason of 1 to "
                        + LONGEST_REASON
                        + " characters");
              });
    }
    Path target = Options.<Path>given(to).orElseGet(() -> beside(from, kind));
    Problems problems = new Problems();
    boolean isDone = whileHeld(problems, ledger -> attach(ledger, from, target, kind, typed));
    console.problems(problems.all(), isDone ? "it was done" : "nothing was written", false);
    return isDone ? Exit.of(problems) : Math.max(Exit.PROBLEMS, Exit.of(problems));
  }

  private How how(OptionParser typed) {
    String word = Options.<String>given(how).orElse(How.APPEND.word());
    for (How one : How.values()) {
      if (one.word().equals(word)) {
        return one;
      }
    }
    throw typed.wrong("--how has no \"" + word + "\"").expecting("one of append, embed, reference");
  }

  private Path beside(Path from, How kind) {
    String name = String.valueOf(from.getFileName()).replaceFirst("(?i)\\.pdf$", "");
    return from.resolveSibling(name + "-" + job.getValue() + kind.ending);
  }

  private boolean attach(Ledger ledger, Path from, Path target, How kind, OptionParser typed) {
    Index index = ledger.index();
    String number = job.getValue();
    List<SheetStory> sheets = index.ofJob(number).stream().filter(SheetStory::isCurrent).toList();
    if (index.ofJob(number).isEmpty()) {
      throw unknownJob(number, index);
    }
    Optional<String> refused =
        refusal(sheets, index)
            .or(
                () ->
                    Files.exists(target)
                        ? Optional.of(shown(target) + " exists, and is never overwritten")
                        : Optional.empty());
    if (refused.isPresent()) {
      return refuse(refused.get());
    }
    byte[] bill = bytes(from);
    try (Invoice opened = Invoice.open(bill)) {
      if (Options.given(anyway).isEmpty() && !names(opened.text(), number, sheets, index)) {
        return refuse(
            "the invoice names neither the job "
                + number
                + " nor the plate; --anyway REASON attaches the sheet all the same");
      }
      List<SignedSheet> signed = sheets.stream().map(it -> signed(it, index)).toList();
      byte[] written =
          switch (kind) {
            case APPEND -> opened.append(signed.stream().map(SignedSheet::pdf).toList());
            case EMBED -> opened.embed(signed.stream().flatMap(it -> files(it).stream()).toList());
            case REFERENCE -> references(signed);
          };
      new OutFiles(Disk.REAL).write(target, written);
    } catch (IOException e) {
      return refuse("the invoice " + shown(from) + " cannot be used: " + e.getMessage());
    }
    record(ledger, sheets, kind, Hash.of(bill));
    console.say("wrote " + shown(target));
    return true;
  }

  private boolean refuse(String why) {
    console.complain(why);
    return false;
  }

  private static String shown(Path file) {
    return YamlFiles.shown(file);
  }

  private static byte[] bytes(Path file) {
    try {
      // Reading a pipe or a device may never end.
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new IOException("it is no regular file");
      }
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** Why the sheets of the job cannot go with an invoice. */
  private Optional<String> refusal(List<SheetStory> sheets, Index index) {
    List<String> why = new ArrayList<>();
    if (sheets.isEmpty()) {
      why.add("the sheet of " + job.getValue() + " is withdrawn or was replaced");
    }
    for (SheetStory sheet : sheets) {
      if (sheet.isForgotten()) {
        why.add("the page of " + sheet.id() + " was forgotten");
      } else if (sheet.returned().isEmpty()) {
        why.add(
            "the signed sheet "
                + sheet.id()
                + " has not come back; baysheet collect reads its scan");
      } else if (!isAsCollected(sheet, index)) {
        why.add("the signed page " + shown(file(sheet, index)) + " is not as it was collected");
      } else if (sheet.closed().isEmpty() && Options.given(incomplete).isEmpty()) {
        why.add(
            "the sheet "
                + sheet.id()
                + " is not closed; close it, or give --incomplete with the reason");
      }
    }
    return why.stream().findFirst();
  }

  private Path file(SheetStory sheet, Index index) {
    return Collecting.file(folder(), index.record(sheet.id()).orElseThrow(), sheet);
  }

  private boolean isAsCollected(SheetStory sheet, Index index) {
    Path file = file(sheet, index);
    return Files.isRegularFile(file)
        && Hash.of(bytes(file)).equals(sheet.returned().orElseThrow().scan());
  }

  private static boolean names(String text, String job, List<SheetStory> sheets, Index index) {
    String word = "(?<![\\p{L}\\p{N}])" + Pattern.quote(job) + "(?![\\p{L}\\p{N}])";
    return Pattern.compile(word).matcher(text).find()
        || sheets.stream().anyMatch(it -> index.isPlateIn(it.id(), text));
  }

  /** A sheet as it goes with the invoice. */
  private record SignedSheet(SheetStory story, String name, byte[] pdf, byte[] record) {}

  private SignedSheet signed(SheetStory story, Index index) {
    byte[] page = bytes(file(story, index));
    boolean open = story.closed().isEmpty();
    byte[] pdf = open ? covered(story, index) : page;
    String name = index.record(story.id()).orElseThrow().name();
    return new SignedSheet(story, name, pdf, bytes(index.recordFile(story.id())));
  }

  private byte[] covered(SheetStory story, Index index) {
    String reason = Options.<String>given(incomplete).orElseThrow();
    return new SignedPages()
        .covered(
            index.record(story.id()).orElseThrow(),
            CollectedForms.picture(file(story, index)).orElseThrow(),
            "Sheet " + story.id() + " is not complete: " + reason);
  }

  private static List<Attachment> files(SignedSheet sheet) {
    return List.of(
        new Attachment(
            sheet.name() + "-signed.pdf",
            "application/pdf",
            Relationship.SUPPLEMENT,
            sheet.pdf(),
            "The signed bay sheet " + sheet.story().id()),
        new Attachment(
            sheet.name() + ".json",
            "application/json",
            Relationship.DATA,
            sheet.record(),
            "The figures of bay sheet " + sheet.story().id()));
  }

  private static byte[] references(List<SignedSheet> sheets) {
    StringBuilder xml = new StringBuilder();
    sheets.forEach(
        it ->
            xml.append(InvoiceReference.xml(it.story().id(), it.name() + "-signed.pdf", it.pdf())));
    return xml.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void record(Ledger ledger, List<SheetStory> sheets, How kind, String bill) {
    List<Event> events = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    for (SheetStory sheet : sheets) {
      boolean open = sheet.closed().isEmpty();
      events.add(new Attached(today.get(), sheet.id(), kind.word(), bill, open));
      if (open) {
        note(sheet, "incomplete", incomplete).ifPresent(notes::add);
      }
      note(sheet, "anyway", anyway).ifPresent(notes::add);
    }
    ledger.add(events, notes);
  }

  private static Optional<Note> note(SheetStory sheet, String about, OptionSpec reason) {
    return Options.<String>given(reason).map(text -> new Note(sheet.id(), about, text));
  }

  /**
   * The reference of an electronic invoice to a signed sheet: group BG-24 of EN 16931-1, in the
   * syntax of UBL 2.1 (CEN/TS 16931-3-2).
   */
  private static final class InvoiceReference {
    private InvoiceReference() {}

    /**
     * The element that goes into an invoice.
     *
     * @param id of the sheet, BT-122
     * @param name of the file that is attached, BT-125
     */
    static String xml(String id, String name, byte[] pdf) {
      return """
      <cac:AdditionalDocumentReference
          xmlns:cac="urn:oasis:names:specification:ubl:schema:xsd:CommonAggregateComponents-2"
          xmlns:cbc="urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2">
        <cbc:ID>%s</cbc:ID>
        <cbc:DocumentDescription>Signed bay sheet %s</cbc:DocumentDescription>
        <cac:Attachment>
          <cbc:EmbeddedDocumentBinaryObject mimeCode="application/pdf" filename="%s">%s</cbc:EmbeddedDocumentBinaryObject>
        </cac:Attachment>
      </cac:AdditionalDocumentReference>
      """
          .formatted(
              escaped(id), escaped(id), escaped(name), Base64.getEncoder().encodeToString(pdf));
    }

    private static String escaped(String text) {
      return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
  }
}
