package baysheet.wording;

import baysheet.books.Fastener;
import baysheet.books.Glossary;
import baysheet.books.Remark;
import baysheet.books.Shop;
import baysheet.sheet.Heading;
import baysheet.sheet.Name;
import baysheet.sheet.Statement;
import baysheet.torque.Reach;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * British or American English: the program's own phrases in either, and what people wrote in files
 * through the glossary. Names of people, vehicles and sources stay, and so does what somebody noted
 * on the job.
 */
public final class Language {
  /** As the program and its catalogue are written. */
  public static final Language BRITISH = new Language(false, Glossary.of(Map.of()));

  private final boolean american;
  private final Glossary glossary;
  private final Statements statements = new Statements(this);

  private Language(boolean american, Glossary glossary) {
    this.american = american;
    this.glossary = glossary;
  }

  /** The language of a sheet. */
  public static Language of(Heading heading) {
    return new Language(heading.style().terms() == Shop.Terms.AMERICAN, heading.style().glossary());
  }

  /** Its tag of BCP 47. */
  public String tag() {
    return american ? "en-US" : "en-GB";
  }

  /** What somebody wrote in a file. */
  public String text(String written) {
    return american ? glossary.translate(written) : written;
  }

  /** What a sheet says at a place. */
  public String text(Statement statement) {
    return statements.text(statement);
  }

  String wrench(Statement.WrenchFor wrench) {
    return statements.wrench(wrench);
  }

  /** All works of a job in one line. */
  public String title(Heading heading) {
    return String.join("; ", statements(heading.works()));
  }

  /** Where something comes from: what somebody wrote stays as it is. */
  public String source(Statement source) {
    return source instanceof Statement.Written written ? written.text() : text(source);
  }

  public List<String> sources(List<Statement> all) {
    return all.stream().map(this::source).toList();
  }

  public List<String> statements(List<Statement> all) {
    return all.stream().map(this::text).toList();
  }

  public Optional<String> text(Optional<String> written) {
    return written.map(this::text);
  }

  public List<String> texts(List<String> written) {
    return american ? written.stream().map(glossary::translate).toList() : written;
  }

  public String name(Name name) {
    return american ? glossary.translate(name.american()) : name.british();
  }

  /** For one or for several. */
  String plural(Name name, int count) {
    return Statements.plural(name(name), count);
  }

  public String lock(Fastener.Lock lock) {
    return own(Phrase.valueOf(lock.name()));
  }

  /** What a book says of a fastener, behind the words of its key. */
  String remark(Remark remark) {
    String before = american ? remark.key().american() : remark.key().british();
    return Phrases.together(before + text(remark.text()));
  }

  /** What stands in a socket's place, by its tool and its length. */
  public static String insertAndReach(Reach reach) {
    return reach.tool().print() + ", reach " + reach.length().print();
  }

  /** What stands in a socket's place, and how: the setting holds for that angle only. */
  public static String insert(Reach reach) {
    boolean inLine = reach.angle().value().signum() == 0;
    return reach.tool().print() + " " + (inLine ? "in line" : "at " + reach.angle().print());
  }

  /** What the program itself says. */
  String own(Phrase phrase, Object... parts) {
    return (american ? phrase.american() : phrase.british()).formatted(parts);
  }
}
