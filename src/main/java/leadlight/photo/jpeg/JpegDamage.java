package leadlight.photo.jpeg;

/** Why a JPEG is not whole, in words that go on from "is damaged: ". */
final class JpegDamage extends RuntimeException {

  private static final long serialVersionUID = 1;

  JpegDamage(String what) {
    super(what);
  }
}
