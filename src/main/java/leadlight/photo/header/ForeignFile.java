package leadlight.photo.header;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Names the files that are no readable picture, so that the user knows what to convert. */
final class ForeignFile {

  private static final String CONVERT = "; save it as JPEG, PNG or TIFF";
  private static final String DEVELOP =
      " is a raw camera file; develop it, or let the camera write JPEG, then use that file";

  /** First bytes as Latin-1 text and what they mean; sources: the formats' own specifications. */
  private static final Map<String, String> STARTS = new LinkedHashMap<>();

  /** Major brands of ISO base media files (ISO/IEC 14496-12, registered brands). */
  private static final Map<String, String> BRANDS = new LinkedHashMap<>();

  static {
    STARTS.put("GIF8", "is a GIF, which keeps 256 colours only" + CONVERT + " from the camera");
    STARTS.put("FUJIFILMCCD-RAW", DEVELOP.strip());
    STARTS.put("IIRO", DEVELOP.strip());
    STARTS.put("IIRS", DEVELOP.strip());
    STARTS.put("IIU\0", DEVELOP.strip());
    STARTS.put("MMOR", DEVELOP.strip());
    STARTS.put("\0\0\0\fjP  ", "is a JPEG 2000 picture" + CONVERT);
    STARTS.put("\0\0\0\fJXL ", "is a JPEG XL picture" + CONVERT);
    STARTS.put("\u00ff\n", "is a JPEG XL picture" + CONVERT);
    STARTS.put("%PDF", "is a PDF; export the picture in it as JPEG, PNG or TIFF");
    STARTS.put("8BPS", "is a layered picture" + CONVERT);
    STARTS.put("PK\u0003\u0004", "is a ZIP archive; unpack it and name a picture in it");
    STARTS.put("RIFF", "is a sound or video file; save a still of it as JPEG or PNG");
    for (String brand : new String[] {"heic", "heix", "hevc", "heim", "heis", "mif1", "msf1"}) {
      BRANDS.put(brand, "is a HEIC photo" + CONVERT + ", or set the phone to JPEG");
    }
    BRANDS.put("avif", "is an AVIF picture" + CONVERT);
    BRANDS.put("avis", "is an AVIF picture" + CONVERT);
    BRANDS.put("crx ", DEVELOP.strip());
  }

  private ForeignFile() {}

  /** The end of the line that names the file: what it is and what to do. */
  static String whatAndTodo(ByteBuffer start) {
    String text = StandardCharsets.ISO_8859_1.decode(start.duplicate().rewind()).toString();
    if (text.startsWith("ftyp", 4) && text.length() >= 12) {
      return BRANDS.getOrDefault(
          text.substring(8, 12), "is a video; save a still of it as JPEG or PNG");
    }
    for (Map.Entry<String, String> known : STARTS.entrySet()) {
      if (text.startsWith(known.getKey())) {
        return known.getValue();
      }
    }
    return (isText(text) ? "is a text file, not a picture" : "is not a picture")
        + "; name a JPEG, PNG, TIFF, BMP or WebP file";
  }

  /** The line's end for a raw file that is built like a TIFF. */
  static String rawCameraFile() {
    return DEVELOP.strip();
  }

  private static boolean isText(String start) {
    return start.chars().allMatch(c -> c >= ' ' || c == '\t' || c == '\n' || c == '\r');
  }
}
