package leadlight.pipeline;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.data.DataFile;
import leadlight.model.FindingKind;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.row.RowSpec;

/**
 * What every report must say besides its findings: what a photo from above cannot show, and the
 * cautions of the bench. Which is said when is data in {@code models/advice.json}; {@code
 * leadlight.text} has the words ({@code note.advice.ID}).
 *
 * @param notVisible what cannot be seen
 * @param cautions what can hurt
 */
record Advice(
    @JsonProperty(required = true) List<Sentence> notVisible,
    @JsonProperty(required = true) List<Sentence> cautions) {

  /**
   * One sentence.
   *
   * @param id its name in the message files
   * @param connectors it is said only for connectors whose id starts with one of these; empty: all
   * @param findings it is said only if one of these is found; empty: always
   * @param source where it comes from
   */
  record Sentence(
      @JsonProperty(required = true) String id,
      @JsonProperty(required = true) List<String> connectors,
      @JsonProperty(required = true) List<FindingKind> findings,
      @JsonProperty(required = true) String source) {

    private boolean fits(RowSpec row) {
      return connectors.isEmpty() || connectors.stream().anyMatch(row.connectorId()::startsWith);
    }

    private boolean fits(Set<FindingKind> found) {
      return findings.isEmpty() || findings.stream().anyMatch(found::contains);
    }
  }

  static Advice builtIn() {
    return DataFile.builtIn("advice.json").read(Advice.class);
  }

  List<Note> notVisible(RowSpec row) {
    return said(notVisible.stream().filter(sentence -> sentence.fits(row)), row);
  }

  List<Note> cautions(RowSpec row, List<GradedJoint> joints) {
    Set<FindingKind> found =
        joints.stream()
            .flatMap(joint -> joint.findings().stream())
            .map(Finding::kind)
            .collect(Collectors.toSet());
    return said(
        cautions.stream().filter(sentence -> sentence.fits(row) && sentence.fits(found)), row);
  }

  private static List<Note> said(Stream<Sentence> sentences, RowSpec row) {
    return sentences.<Note>map(it -> new NoteOfPhoto.Advice(it.id(), row.leads())).toList();
  }
}
