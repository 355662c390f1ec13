package leadlight.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import leadlight.model.PointPx;
import leadlight.report.words.Rounded;

/** Fields of one kind, written in one way: numbers are rounded so that no noise digits show. */
public final class JsonFields {

  private static final int PX_DECIMALS = 3;
  private static final MathContext MAP_DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

  private final JsonGenerator json;

  public JsonFields(JsonGenerator json) {
    this.json = json;
  }

  public void text(String name, String value) throws IOException {
    json.writeStringField(name, value);
  }

  public void whole(String name, int value) throws IOException {
    json.writeNumberField(name, value);
  }

  public void number(String name, double value, int decimals) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(Rounded.to(value, decimals));
  }

  public void point(String name, PointPx point) throws IOException {
    json.writeFieldName(name);
    json.writeStartArray();
    json.writeNumber(Rounded.to(point.x(), PX_DECIMALS));
    json.writeNumber(Rounded.to(point.y(), PX_DECIMALS));
    json.writeEndArray();
  }

  public void pins(String name, List<Integer> pins) throws IOException {
    json.writeArrayFieldStart(name);
    for (int pin : pins) {
      json.writeNumber(pin);
    }
    json.writeEndArray();
  }

  void texts(String name, List<String> lines) throws IOException {
    json.writeArrayFieldStart(name);
    for (String line : lines) {
      json.writeString(line);
    }
    json.writeEndArray();
  }

  void map(String name, double[] rowMajor) throws IOException {
    json.writeArrayFieldStart(name);
    for (double value : rowMajor) {
      json.writeNumber(new BigDecimal(value).round(MAP_DIGITS).stripTrailingZeros());
    }
    json.writeEndArray();
  }
}
