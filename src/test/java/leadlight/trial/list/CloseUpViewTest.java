package leadlight.trial.list;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.trial.Truths;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.Test;

class CloseUpViewTest {

  private final PhotoTruth truth =
      Truths.row(
          Truths.joint(1, TrueClass.ACCEPTABLE),
          Truths.joint(2, TrueClass.ACCEPTABLE),
          Truths.joint(3, TrueClass.ACCEPTABLE));

  @Test
  void theJointIsInTheMiddleItsBodyAboveAndPinOneToTheLeft() {
    Homography toPhoto = CloseUpView.of(truth, truth.joints().get(1), 101);

    PointPx middle = toPhoto.map(50, 50);
    PointPx left = toPhoto.map(0, 50);
    PointPx bottom = toPhoto.map(50, 100);

    assertThat(middle.distanceTo(new PointPx(90, 85))).isLessThan(1e-9);
    assertThat(left.x()).as("towards pin 1").isLessThan(middle.x());
    assertThat(bottom.y()).as("away from the body").isGreaterThan(middle.y());
  }
}
