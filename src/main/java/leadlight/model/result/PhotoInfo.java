package leadlight.model.result;

import java.util.Optional;

/**
 * What is known of a photo file.
 *
 * @param file file name without folder
 * @param sha256 hash of the file's bytes, lower-case hex
 * @param widthPx width of the upright picture
 * @param heightPx height of the upright picture
 * @param format "jpeg", "png", "tiff", "bmp" or "webp", by content
 * @param bitsPerChannel 8 or 16, as stored
 * @param exifOrientation 1 to 8; 1 if the file says none
 * @param takenAt ISO 8601 capture time, with an offset only if the file has one
 */
public record PhotoInfo(
    String file,
    String sha256,
    int widthPx,
    int heightPx,
    String format,
    int bitsPerChannel,
    int exifOrientation,
    Optional<String> takenAt) {}
