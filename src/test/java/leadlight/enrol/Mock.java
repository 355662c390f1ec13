package leadlight.enrol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import leadlight.enrol.learn.EnrolTuning;
import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Enrolment.Kind;
import leadlight.enrol.learn.Enrolment.Photo;
import leadlight.enrol.learn.Enrolment.Setting;
import leadlight.enrol.learn.Enrolment.Shown;
import leadlight.enrol.learn.JointFeatures;
import leadlight.enrol.learn.Learning;

/** Photos and joints made of numbers: the first twenty tell what a joint is, the rest is noise. */
public final class Mock {

  static final EnrolTuning TUNING = EnrolTuning.builtIn();

  public static final Setting SETTING = new Setting(40, Optional.of(0.03), 20, 200, true);

  private static final int TELLING = 20;

  private final Random dice = new Random(7);
  private final List<Photo> photos = new ArrayList<>();
  private final List<Shown> joints = new ArrayList<>();

  /** Two sound photos and two unsoldered ones, 15 joints each; the kinds lie near each other. */
  static Mock twoOfEach() {
    return new Mock()
        .photo(Kind.SOUND, 15, -0.07)
        .photo(Kind.SOUND, 15, -0.06)
        .photo(Kind.UNSOLDERED, 15, 0.07)
        .photo(Kind.UNSOLDERED, 15, 0.05);
  }

  public Mock photo(Kind kind, int count, double at) {
    return photo(kind, count, at, SETTING);
  }

  public Mock photo(Kind kind, int count, double at, Setting setting) {
    for (int pin = 1; pin <= count; pin++) {
      joints.add(new Shown(photos.size(), pin, kind == Kind.SOUND, 0, noisy(at)));
    }
    String hash = "%064x".formatted(photos.size() + 1);
    photos.add(new Photo(kind + ".jpg", hash, kind, setting, features(at)));
    return this;
  }

  /** A photo out of the record, of joints of one kind. */
  Mock recorded(int count, double at, boolean soldered, Setting setting) {
    for (int pin = 1; pin <= count; pin++) {
      joints.add(new Shown(photos.size(), pin, soldered, 0, noisy(at)));
    }
    String hash = "%064x".formatted(photos.size() + 1);
    photos.add(new Photo("recorded.jpg", hash, Kind.RECORDED, setting, features(at)));
    return this;
  }

  /** A joint without noise. */
  static float[] features(double at) {
    float[] features = new float[JointFeatures.COUNT];
    for (int i = 0; i < TELLING; i++) {
      features[i] = (float) at;
    }
    return features;
  }

  private float[] noisy(double at) {
    float[] features = features(at);
    for (int i = 0; i < features.length; i++) {
      features[i] += (float) dice.nextGaussian() * 0.1f;
    }
    return features;
  }

  Enrolment enrolment() {
    return new Learning(photos, joints, TUNING).enrolment("ring", 1, "reader", "both");
  }

  public Bench bench() {
    return new Bench(enrolment());
  }
}
