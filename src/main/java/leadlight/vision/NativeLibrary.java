package leadlight.vision;

/** Loads OpenCV's native library, once and only when first needed. */
final class NativeLibrary {

  private static final class Holder {
    static {
      nu.pattern.OpenCV.loadLocally();
    }

    static void touch() {}
  }

  private NativeLibrary() {}

  static void load() {
    Holder.touch();
  }
}
