package leadlight.cli.drill;

import java.nio.charset.StandardCharsets;
import leadlight.app.record.RecordLines;
import leadlight.cli.option.RecordOption;
import leadlight.data.Hash;
import leadlight.drill.skill.History;
import leadlight.model.UserError;
import leadlight.record.DrillRecord;

/** What the record has of trainees. */
final class DrillPeople {

  private static final int HASH = 8;

  private DrillPeople() {}

  /** The trainees' part of a record that is there. */
  static DrillRecord existing(RecordOption record) {
    return record.existingDrill();
  }

  /** A person's history; nobody who asks for one has misspelt the name unnoticed. */
  static History history(RecordOption record, String person) {
    try (DrillRecord open = existing(record)) {
      return history(open, person);
    }
  }

  static History history(DrillRecord open, String person) {
    if (!open.people().contains(person)) {
      throw new UserError(
          "nobody called \"%s\" judged a practice set; there are: %s"
              .formatted(
                  RecordLines.printable(person),
                  RecordLines.printable(String.join(", ", open.people()))));
    }
    return History.of(open, person);
  }

  /** A person's part of a file name: letters, digits and hyphens, and a hash that tells apart. */
  static String fileName(String person) {
    String plain = person.replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    String hash = Hash.sha256(person.getBytes(StandardCharsets.UTF_8)).substring(0, HASH);
    return plain.matches("[A-Za-z0-9-]{1,40}") && plain.equals(person)
        ? plain
        : plain.substring(0, Math.min(40, plain.length())) + "-" + hash;
  }
}
