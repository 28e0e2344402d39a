package baysheet.rules;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.FileReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.text.DecimalFormat;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TimeZone;
import java.util.UUID;

/** Does everything that is forbidden, so that each rule can be seen to bite; never run. */
final class Offender {
  private Offender() {}

  static List<Object> offend(Exception fault) throws IOException {
    fault.printStackTrace();
    try (Reader file = new FileReader(new File("file"));
        Reader stream = new InputStreamReader(new ByteArrayInputStream("text".getBytes()))) {
      return List.of(
          LocalDate.now(),
          Clock.systemUTC(),
          System.getenv(),
          Runtime.getRuntime(),
          Locale.getDefault(),
          TimeZone.getDefault(),
          ZoneId.systemDefault(),
          String.format("%d", 1) + "I".toLowerCase() + new String(new byte[0]),
          Charset.defaultCharset(),
          Math.random() + new Random().nextInt() + new SplittableRandom().nextInt(),
          UUID.randomUUID(),
          new Date(),
          new DecimalFormat("0.0"),
          DateTimeFormatter.ofPattern("MMM"),
          List.of(file, stream));
    }
  }
}
