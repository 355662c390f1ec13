package leadlight.enrol;

import java.util.ArrayList;
import java.util.List;
import leadlight.enrol.learn.EnrolTuning;
import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Enrolment.Photo;
import leadlight.enrol.learn.Enrolment.Shown;
import leadlight.enrol.learn.Learning;
import leadlight.model.joint.BenchOpinion.Side;

/**
 * What the bench would have said of its own joints had their photo not been shown: all is learned
 * anew without it, borders too. A photo without which a kind has no border is not counted.
 *
 * @param unsoldered unsoldered joints that were counted
 * @param passed those of them that look soldered
 * @param sound sound joints that were counted
 * @param called those of them that look unsoldered
 */
public record LeftOut(int unsoldered, int passed, int sound, int called) {

  /** Counts it: a line for each pair of photos. */
  public static LeftOut of(Enrolment enrolment) {
    LeftOut sum = new LeftOut(0, 0, 0, 0);
    List<Shown> leads = enrolment.leads();
    for (int photo = 0; photo < enrolment.photos().size(); photo++) {
      Bench without = new Bench(without(photo, enrolment));
      if (without.bordered()) {
        for (Shown joint : leads) {
          sum = joint.photo() == photo ? sum.plus(joint, without) : sum;
        }
      }
    }
    return sum;
  }

  private LeftOut plus(Shown joint, Bench bench) {
    Side side = bench.opinion(joint.features(), joint.general()).side();
    return joint.soldered()
        ? new LeftOut(unsoldered, passed, sound + 1, called + (side == Side.UNSOLDERED ? 1 : 0))
        : new LeftOut(unsoldered + 1, passed + (side == Side.SOLDERED ? 1 : 0), sound, called);
  }

  private static Enrolment without(int photo, Enrolment enrolment) {
    List<Photo> photos = new ArrayList<>(enrolment.photos());
    photos.remove(photo);
    List<Shown> joints = new ArrayList<>();
    for (Shown it : enrolment.joints()) {
      if (it.photo() != photo) {
        int place = it.photo() - (it.photo() > photo ? 1 : 0);
        joints.add(new Shown(place, it.pin(), it.soldered(), it.general(), it.features()));
      }
    }
    return new Learning(photos, joints, EnrolTuning.builtIn())
        .enrolment(
            enrolment.bench(), enrolment.version(), enrolment.reader(), enrolment.opinions());
  }
}
