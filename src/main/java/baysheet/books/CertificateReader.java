package baysheet.books;

import baysheet.report.Located;
import baysheet.yaml.Keyed;
import baysheet.yaml.MapReader;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads what somebody is certified for. */
final class CertificateReader {
  /** In place of a date, where a certificate has no end. */
  private static final String UNLIMITED = "unlimited";

  private static final ValueReader<Proof> PROOF =
      ValueReaders.record("a certificate", CertificateReader::proof);
  private static final ValueReader<List<Keyed<String, Proof>>> ENTRY =
      ValueReaders.map("a qualification", ValueReaders::nameOf, PROOF);
  private static final ValueReader<Optional<LocalDate>> UNTIL =
      ValueReaders.value(CertificateReader::untilOf);

  private CertificateReader() {}

  /** A certificate before the qualification that its key names. */
  private record Proof(Located<String> number, Optional<LocalDate> until) {}

  /** A list of maps of one qualification each, or one map of them all. */
  static List<Shop.Certificate> read(MapReader map) {
    List<Keyed<String, Proof>> all =
        map.listOrOne("qualifications", ENTRY).stream()
            .flatMap(entry -> entry.value().stream())
            .toList();
    Words.once(all.stream().map(Keyed::key).toList(), map.problems());
    return all.stream().map(CertificateReader::certificate).toList();
  }

  private static Shop.Certificate certificate(Keyed<String, Proof> entry) {
    Proof proof = entry.value().value();
    return new Shop.Certificate(entry.key(), proof.number(), proof.until());
  }

  private static Optional<Proof> proof(MapReader map) {
    Optional<Located<String>> number = map.required("certificate", ValueReaders.text());
    Optional<Located<Optional<LocalDate>>> until = map.required("until", UNTIL);
    return map.build(() -> new Proof(number.get(), until.get().value()));
  }

  private static ParseOutcome<Optional<LocalDate>> untilOf(String text) {
    return text.equals(UNLIMITED)
        ? ParseOutcome.ok(Optional.empty())
        : ValueReaders.dateOf(text).map(Optional::of);
  }
}
