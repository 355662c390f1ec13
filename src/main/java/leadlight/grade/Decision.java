package leadlight.grade;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * From which chance on a fault counts as seen, from which as possible, and what must have been seen
 * before a joint is called good: {@code models/grade/decision.json}.
 *
 * @param seenFrom chance from which a finding is stated
 * @param doubtFrom chance by one opinion alone from which a fault is possible
 * @param doubtFromWithReader the same where the second reader was asked: its chances are the
 *     sharper ones, so that less of a doubt counts
 * @param yesFrom chance from which an opinion says rather yes
 * @param noTo chance up to which an opinion says surely no
 * @param filletMeasuresTo chance of no fillet, by the measures, up to which they have seen one
 * @param filletReaderTo the same by the second reader
 * @param leadTo chance of no lead, by one opinion alone or by the second reader, up to which a lead
 *     was seen
 * @param leadMeasuresTo the same by the measures where the second reader has seen the lead, too
 * @param roomFrom land ahead of the toe from which a fillet shows there, pitches
 * @param knownTo strangeness up to which a joint is like known ones
 * @param unfamiliarFrom how unfamiliar a make of photo is, by the second reader, from which nothing
 *     is said of wetting
 * @param unfamiliarFromByMeasures the same by the measures alone, which tell less
 * @param alikeFrom share of a row's joints whose wetting is in doubt from which the row is said to
 *     look alike throughout
 * @param prodFirst share of the leads to prod that comes first, being the most suspect
 */
record Decision(
    @JsonProperty(required = true) Figure seenFrom,
    @JsonProperty(required = true) Figure doubtFrom,
    @JsonProperty(required = true) Figure doubtFromWithReader,
    @JsonProperty(required = true) Figure yesFrom,
    @JsonProperty(required = true) Figure noTo,
    @JsonProperty(required = true) Figure filletMeasuresTo,
    @JsonProperty(required = true) Figure filletReaderTo,
    @JsonProperty(required = true) Figure leadTo,
    @JsonProperty(required = true) Figure leadMeasuresTo,
    @JsonProperty(required = true) Figure roomFrom,
    @JsonProperty(required = true) Figure knownTo,
    @JsonProperty(required = true) Figure unfamiliarFrom,
    @JsonProperty(required = true) Figure unfamiliarFromByMeasures,
    @JsonProperty(required = true) Figure alikeFrom,
    @JsonProperty(required = true) Figure prodFirst) {

  static Decision builtIn() {
    return DataFile.builtIn("grade/decision.json").read(Decision.class);
  }
}
