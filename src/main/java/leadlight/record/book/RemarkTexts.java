package leadlight.record.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import leadlight.data.JsonText;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.Remark;

/** Remarks in columns of the record: codes with arguments as JSON; empty where there are none. */
final class RemarkTexts {

  private RemarkTexts() {}

  static <T extends Remark> Optional<T> one(ResultSet row, String column, Class<T> type)
      throws SQLException {
    return Optional.ofNullable(row.getString(column)).map(text -> JsonText.read(text, type));
  }

  static <T extends Remark> List<T> all(ResultSet row, String column, Class<T[]> type)
      throws SQLException {
    return Optional.ofNullable(row.getString(column))
        .map(text -> List.of(JsonText.read(text, type)))
        .orElse(List.of());
  }

  /** Notes by their codes, or by the sentences that alone were kept before there were codes. */
  static List<Note> notes(ResultSet row, String column, String sentences) throws SQLException {
    return row.getString(column) != null
        ? all(row, column, Note[].class)
        : Stream.of(JsonText.read(row.getString(sentences), String[].class))
            .<Note>map(NoteOfJoint.Earlier::new)
            .toList();
  }
}
