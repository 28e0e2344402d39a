package baysheet.pdf;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Holds a file against a standard with the veraPDF rules. */
public final class Conformance {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Conformance() {}

  /** What fails of PDF/A-3a and PDF/UA-1, one line a check; empty for a file that keeps to both. */
  public static List<String> failures(byte[] pdf) throws Exception {
    List<String> failures = new ArrayList<>(failures(pdf, PDFAFlavour.PDFA_3_A));
    failures.addAll(failures(pdf, PDFAFlavour.PDFUA_1));
    return failures;
  }

  /** What fails of PDF/A-3b. */
  public static List<String> archiveFailures(byte[] pdf) throws Exception {
    return failures(pdf, PDFAFlavour.PDFA_3_B);
  }

  /** What fails of PDF/UA-1. */
  public static List<String> accessFailures(byte[] pdf) throws Exception {
    return failures(pdf, PDFAFlavour.PDFUA_1);
  }

  private static List<String> failures(byte[] pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, true)) {
      ValidationResult result = validator.validate(parser);
      if (result.getTotalAssertions() < 30) {
        throw new IllegalStateException(
            "only " + result.getTotalAssertions() + " checks were made");
      }
      return result.getTestAssertions().stream()
          .filter(check -> check.getStatus() != TestAssertion.Status.PASSED)
          .map(check -> flavour.getId() + " " + check.getRuleId() + " " + check.getMessage())
          .toList();
    }
  }
}
