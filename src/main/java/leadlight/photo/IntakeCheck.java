package leadlight.photo;

import java.util.Locale;
import leadlight.photo.header.Header;
import leadlight.photo.header.Source;
import leadlight.photo.limit.PhotoLimits;

/** Refuses what is too large or too small, from its header and before memory is taken. */
final class IntakeCheck {

  private static final double MEGA = 1e6;
  private static final int CHANNELS = 3;

  private final PhotoLimits.Intake limits;

  IntakeCheck(PhotoLimits.Intake limits) {
    this.limits = limits;
  }

  void file(Source source) {
    double megabytes = source.size() / MEGA;
    if (megabytes > limits.fileMegabytesMax().value()) {
      throw source.refused(
          say(
              "is a file of %.0f MB; the most is %.0f MB: crop the row out, or save it as JPEG",
              megabytes, limits.fileMegabytesMax().value()));
    }
  }

  void picture(Source source, Header header) {
    double megapixels = header.widthPx() * (double) header.heightPx() / MEGA;
    int shorter = Math.min(header.widthPx(), header.heightPx());
    int longer = Math.max(header.widthPx(), header.heightPx());
    String size = header.widthPx() + " x " + header.heightPx() + " px";
    if (shorter < limits.sidePxMin().value()) {
      throw source.refused("is of " + size + ", too small to show a row; take a larger picture");
    }
    if (megapixels > limits.pictureMegapixelsMax().value() || longer > limits.sidePxMax().value()) {
      throw source.refused(
          say(
              "claims %s; the most is %.0f megapixels and %.0f px a side: crop the row out, or"
                  + " take a smaller picture",
              size, limits.pictureMegapixelsMax().value(), limits.sidePxMax().value()));
    }
    double working = source.size() / MEGA + decodedMegabytes(header, megapixels);
    if (working > limits.workingMegabytesMax().value()) {
      throw source.refused(
          say(
              "is of %s with %d bits a channel and needs %.0f MB of memory; the most is %.0f MB:"
                  + " save it with 8 bits or as JPEG",
              size, header.bitsPerChannel(), working, limits.workingMegabytesMax().value()));
    }
  }

  /** Whether the picture is to be looked at in half size. */
  boolean half(Header header) {
    return header.widthPx() * (double) header.heightPx() / MEGA
        > limits.fullSizeMegapixelsMax().value();
  }

  /** A JPEG to be halved is never held in full. */
  private double decodedMegabytes(Header header, double megapixels) {
    boolean halvedOnTheWay = half(header) && "jpeg".equals(header.format());
    int bytes = header.bitsPerChannel() / 8;
    return megapixels * CHANNELS * bytes / (halvedOnTheWay ? 4 : 1);
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
