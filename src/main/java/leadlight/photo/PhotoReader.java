package leadlight.photo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlight.model.UserError;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.PhotoInfo;
import leadlight.photo.header.Header;
import leadlight.photo.header.Source;
import leadlight.photo.jpeg.JpegLimits;
import leadlight.photo.jpeg.JpegWalk;
import leadlight.photo.limit.PhotoLimits;
import leadlight.vision.Frame;
import leadlight.vision.decode.ApartDecoder;
import leadlight.vision.decode.ApartDecoder.Way;
import leadlight.vision.decode.Codec.Decoded;
import leadlight.vision.decode.EncodedPicture;

/**
 * Reads JPEG, PNG, TIFF, BMP and WebP files, told by content, into upright photos.
 *
 * <p>16-bit values are scaled to 8 by division (see {@link leadlight.vision.decode.Codec}); grey
 * becomes three equal channels; an alpha channel is dropped; of a TIFF of several pages the first
 * is taken, with a note. Colour profiles are not applied. Refused with one line: CMYK, moving
 * pictures, raw camera files and other formats, files that are cut short or damaged, and sizes
 * beyond {@code models/photo/limits.json}, these before memory is taken.
 */
public final class PhotoReader {

  /**
   * Kinds of which only the frame was looked at before the decoder gets them. The data of a JPEG
   * are walked, those of a PNG have check sums, a BMP is pixels alone.
   */
  private static final Set<String> APART = Set.of("tiff", "webp");

  private final IntakeCheck check;
  private final JpegLimits whole;
  private final ApartDecoder apart;

  /** A reader with the built-in limits. */
  public PhotoReader() {
    this(PhotoLimits.standard());
  }

  public PhotoReader(PhotoLimits limits) {
    check = new IntakeCheck(limits.intake());
    whole = limits.whole().jpeg();
    apart =
        new ApartDecoder(
            Duration.ofMillis((long) (limits.cost().apartSecondsMax().value() * 1000)),
            (int) limits.cost().apartMegabytesMax().value());
  }

  /**
   * Reads a file.
   *
   * @return to be closed by the caller
   * @throws UserError if the file cannot be read or is no fit picture: one line that says what,
   *     where and what to do
   */
  public Photo read(Path file) {
    try (Source source = Source.open(file)) {
      check.file(source);
      Header header = Header.of(source);
      check.picture(source, header);
      return read(source, header, suspicious(source, header));
    } catch (IOException e) {
      // Only closing can fail here, after all has been read.
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Whether the file is better decoded apart. A decoder fills gaps in a JPEG up without a word, so
   * one that is damaged is refused; on one that is unusual it would talk to the terminal.
   */
  private boolean suspicious(Source source, Header header) {
    if (!"jpeg".equals(header.format())) {
      return APART.contains(header.format());
    }
    JpegWalk.Look look = JpegWalk.at(source::read, whole);
    look.damage()
        .ifPresent(
            how -> {
              throw source.damaged(how);
            });
    return look.unusual();
  }

  private Photo read(Source source, Header header, boolean suspicious) {
    List<Note> notes = new ArrayList<>(header.notes());
    FileName.mismatch(source.file(), header.format()).ifPresent(notes::add);
    MessageDigest hash = sha256();
    Decoded decoded = decode(source, way(header), suspicious, hash);
    try {
      refuseUnlike(source, header, decoded.frame());
    } catch (UserError e) {
      decoded.frame().close();
      throw e;
    }
    if (decoded.significantBits() != header.bitsPerChannel()) {
      notes.add(new NoteOfPhoto.FewBits(decoded.significantBits()));
    }
    Frame frame = upright(header, decoded.frame(), notes);
    return new Photo(info(source, header, frame, hash), frame, notes);
  }

  private Decoded decode(Source source, Way way, boolean suspicious, MessageDigest hash) {
    try (EncodedPicture picture = source.load(hash)) {
      Optional<Decoded> decoded = suspicious ? apart.decode(picture, way) : way.here(picture);
      return decoded.orElseThrow(source::damaged);
    } catch (ApartDecoder.Lost e) {
      throw source.refused(
          e.late()
              ? "takes too long to decode and was left; save it as JPEG or PNG"
              : "stops its decoder: it is damaged, or takes more memory than it may; copy it again from"
                  + " the camera or card, or save it as JPEG or PNG");
    } catch (UncheckedIOException e) {
      throw source.refused(
          "needs a second process to be decoded safely, and none can be started here; save it as"
              + " JPEG or PNG");
    }
  }

  private Way way(Header header) {
    return header.bitsPerChannel() == 16 ? Way.DEEP : halvedOnTheWay(header) ? Way.HALF : Way.FULL;
  }

  private boolean halvedOnTheWay(Header header) {
    return check.half(header) && "jpeg".equals(header.format());
  }

  /** Refuses a picture that is not what its header says. */
  private void refuseUnlike(Source source, Header header, Frame frame) {
    int by = halvedOnTheWay(header) ? 2 : 1;
    int width = (header.widthPx() + by - 1) / by;
    int height = (header.heightPx() + by - 1) / by;
    boolean swapped = turnedByDecoder(header) && header.exif().orientation() >= 5;
    if (frame.widthPx() != (swapped ? height : width)
        || frame.heightPx() != (swapped ? width : height)) {
      throw source.damaged();
    }
  }

  private Frame upright(Header header, Frame stored, List<Note> notes) {
    Frame frame = stored;
    if (check.half(header)) {
      notes.add(new NoteOfPhoto.HalfSize());
      if (!halvedOnTheWay(header)) {
        frame = replaced(frame, frame.shrunk(0.5));
      }
    }
    int orientation = turnedByDecoder(header) ? 1 : header.exif().orientation();
    return orientation == 1 ? frame : replaced(frame, frame.upright(orientation));
  }

  private static boolean turnedByDecoder(Header header) {
    return "tiff".equals(header.format());
  }

  private static Frame replaced(Frame old, Frame by) {
    old.close();
    return by;
  }

  private static PhotoInfo info(Source source, Header header, Frame frame, MessageDigest hash) {
    return new PhotoInfo(
        source.file().getFileName().toString(),
        HexFormat.of().formatHex(hash.digest()),
        frame.widthPx(),
        frame.heightPx(),
        header.format(),
        header.bitsPerChannel(),
        header.exif().orientation(),
        header.exif().takenAt());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
