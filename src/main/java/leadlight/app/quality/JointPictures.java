package leadlight.app.quality;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.vision.Canvas;

/**
 * Close-ups of joints cut from their photos, body above. Ticks above and below point at the joint;
 * nothing else is told.
 */
public final class JointPictures {

  private static final int SIDE_PX = 240;
  private static final int BOARD_PX = 480;
  private static final int PAPER = 0xffffff;

  private static final int INK = 0x1a1a1a;
  private static final int TICK_PX = 12;

  /** The foot, its fillets and the neighbours. */
  private static final double FEET_ACROSS = 2.4;

  private final Path photos;
  private final Map<String, ScoredJoints.Joint> joints = new HashMap<>();

  /**
   * Takes where photos lie.
   *
   * @param photos folder; a photo that is not in it has no picture
   */
  public JointPictures(Path photos, List<ScoredJoints.Joint> joints) {
    this.photos = photos;
    joints.forEach(j -> this.joints.put(j.item(), j));
  }

  /** A joint's close-up as PNG; empty if there is none. */
  public byte[] of(String item) {
    ScoredJoints.Joint joint = joints.get(item);
    Optional<Path> file = joint == null ? Optional.empty() : file(joint.photo());
    if (file.isEmpty()) {
      return new byte[0];
    }
    try (Photo photo = new PhotoReader().read(file.get());
        Canvas canvas = new Canvas(SIDE_PX, SIDE_PX + 2 * TICK_PX, PAPER)) {
      canvas.pasteStraightened(photo.frame(), view(joint), 0, TICK_PX, SIDE_PX, SIDE_PX);
      canvas.fillRect(SIDE_PX / 2 - 2, 0, 4, TICK_PX - 2, INK);
      canvas.fillRect(SIDE_PX / 2 - 2, SIDE_PX + TICK_PX + 2, 4, TICK_PX - 2, INK);
      return canvas.png();
    }
  }

  /** A whole photo, made small. */
  public byte[] ofPhoto(String name) {
    Optional<Path> file = file(name);
    if (file.isEmpty()) {
      return new byte[0];
    }
    try (Photo photo = new PhotoReader().read(file.get())) {
      int width = photo.frame().widthPx();
      int height =
          Math.max(1, (int) Math.round((double) BOARD_PX * photo.frame().heightPx() / width));
      try (Canvas canvas = new Canvas(BOARD_PX, height, PAPER)) {
        canvas.paste(photo.frame(), 0, 0, BOARD_PX, height);
        return canvas.png();
      }
    }
  }

  private Optional<Path> file(String photo) {
    Path name = Path.of(photo).getFileName();
    return Optional.ofNullable(name).map(photos::resolve).filter(Files::isRegularFile);
  }

  private static Homography view(ScoredJoints.Joint joint) {
    PointPx toe = joint.toe();
    PointPx heel = joint.heel();
    double foot = Math.max(1, toe.distanceTo(heel));
    double scale = FEET_ACROSS / SIDE_PX;
    // Down in the close-up is from the heel to the toe.
    double vx = scale * (toe.x() - heel.x());
    double vy = scale * (toe.y() - heel.y());
    double half = (SIDE_PX - 1) / 2.0;
    double ux = foot > 1 ? vy : scale;
    double uy = foot > 1 ? -vx : 0;
    double x = (toe.x() + heel.x()) / 2 - half * (ux + vx);
    double y = (toe.y() + heel.y()) / 2 - half * (uy + vy);
    return new Homography(ux, vx, x, uy, vy, y, 0, 0, 1);
  }
}
