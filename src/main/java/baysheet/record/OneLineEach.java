package baysheet.record;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;

/**
 * Every key of the whole on a line of its own, and every entry of its lists: a step, a torque line
 * or a box is one line, which can be searched for and compared, and no room goes into indenting.
 */
final class OneLineEach extends MinimalPrettyPrinter {
  private static final long serialVersionUID = 1L;
  private static final int WHOLE = 1;
  private static final int LISTS = 2;

  private int depth;

  @Override
  public void writeStartObject(JsonGenerator out) throws IOException {
    out.writeRaw('{');
    depth++;
  }

  @Override
  public void beforeObjectEntries(JsonGenerator out) throws IOException {
    endLine(WHOLE, out);
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator out) throws IOException {
    out.writeRaw(',');
    endLine(WHOLE, out);
  }

  @Override
  public void writeEndObject(JsonGenerator out, int entries) throws IOException {
    endLine(WHOLE, out);
    depth--;
    out.writeRaw('}');
  }

  @Override
  public void writeStartArray(JsonGenerator out) throws IOException {
    out.writeRaw('[');
    depth++;
  }

  @Override
  public void beforeArrayValues(JsonGenerator out) throws IOException {
    endLine(LISTS, out);
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator out) throws IOException {
    out.writeRaw(',');
    endLine(LISTS, out);
  }

  @Override
  public void writeEndArray(JsonGenerator out, int values) throws IOException {
    depth--;
    out.writeRaw(']');
  }

  private void endLine(int level, JsonGenerator out) throws IOException {
    if (depth == level) {
      out.writeRaw('\n');
    }
  }
}
