package leadlight.page.photo;

import java.util.List;
import java.util.Optional;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.text.Messages;
import leadlight.text.Questions;

/**
 * What measures and second reader say of a joint, each by itself.
 *
 * @param lines questions of which at least one of them speaks
 * @param differ true if on a question one of them says rather yes, the other rather no
 * @param unlike true if the reader knows nothing like the joint
 */
public record OpinionsView(List<Questions.Line> lines, boolean differ, boolean unlike) {

  /** Empty if there is one opinion only, or if neither speaks of a joint that is unfit to judge. */
  static Optional<OpinionsView> of(Joint joint, int leads, Messages words) {
    if (joint.byMeasures().isEmpty() || joint.byReader().isEmpty()) {
      return Optional.empty();
    }
    Reading reading = joint.byReader().get();
    List<Questions.Line> lines =
        new Questions(words)
            .spoken(joint.byMeasures().get(), reading.chances(), joint.pin(), leads);
    if (lines.isEmpty() && joint.unfitBecause().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new OpinionsView(lines, lines.stream().anyMatch(Questions.Line::differ), reading.unlike()));
  }
}
