package leadlight.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import leadlight.model.remark.Remark;
import leadlight.text.Sentences;

/** Remarks as JSON: code and arguments, and the English sentence where it is not beside them. */
public final class JsonRemarks {

  private static final int DECIMALS = 5;

  private final JsonGenerator json;
  private final JsonFields fields;
  private final Sentences sentences;

  public JsonRemarks(JsonGenerator json, Sentences sentences) {
    this.json = json;
    this.fields = new JsonFields(json);
    this.sentences = sentences;
  }

  /** {@code NAME: {"code", "args"}}. */
  public void code(String name, Remark remark) throws IOException {
    json.writeObjectFieldStart(name);
    codeAndArgs(remark);
    json.writeEndObject();
  }

  /** {@code NAME: [{"code", "args", "sentence"}]}. */
  void list(String name, List<? extends Remark> remarks) throws IOException {
    json.writeArrayFieldStart(name);
    for (Remark remark : remarks) {
      json.writeStartObject();
      codeAndArgs(remark);
      fields.text("sentence", sentences.of(remark));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** {@code NAME: [sentences]} and {@code NAME_notes: [{"code", "args"}]}. */
  public void sentencesAndCodes(String name, List<? extends Remark> remarks) throws IOException {
    fields.texts(name, sentences.of(remarks));
    json.writeArrayFieldStart(name + "_notes");
    for (Remark remark : remarks) {
      json.writeStartObject();
      codeAndArgs(remark);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void codeAndArgs(Remark remark) throws IOException {
    fields.text("code", remark.code());
    json.writeObjectFieldStart("args");
    for (Map.Entry<String, Object> arg : remark.args().entrySet()) {
      argument(arg.getKey(), arg.getValue());
    }
    json.writeEndObject();
  }

  private void argument(String name, Object value) throws IOException {
    if (value instanceof Double number) {
      fields.number(name, number, DECIMALS);
    } else if (value instanceof Integer number) {
      fields.whole(name, number);
    } else if (value instanceof Boolean so) {
      json.writeBooleanField(name, so);
    } else {
      fields.text(name, String.valueOf(value));
    }
  }
}
