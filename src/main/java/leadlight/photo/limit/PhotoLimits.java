package leadlight.photo.limit;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.photo.PictureFacts;
import leadlight.photo.jpeg.JpegLimits;

/**
 * What a photo may be: {@code models/photo/limits.json}.
 *
 * @param intake what is read at all
 * @param cost what a photo may cost before it is left
 * @param whole when a file is damaged
 * @param directories how much a chain of TIFF directories may hold
 * @param fitness from where on the picture as a whole deserves a sentence
 */
public record PhotoLimits(
    @JsonProperty(required = true) Intake intake,
    @JsonProperty(required = true) Cost cost,
    @JsonProperty(required = true) Whole whole,
    @JsonProperty(required = true) Chain directories,
    @JsonProperty(required = true) Fit fitness) {

  /** From where on a JPEG is damaged for certain, see {@link JpegLimits}. */
  public record Whole(
      @JsonProperty(required = true) Limit scansMax,
      @JsonProperty(required = true) Limit lastZeroBytesMax,
      @JsonProperty(required = true) Limit blockOutOfRangeMax,
      @JsonProperty(required = true) Limit overshootLevelsMax,
      @JsonProperty(required = true) Limit fastTransformLevels,
      @JsonProperty(required = true) Limit seamStrength,
      @JsonProperty(required = true) Limit seamFinestSteps,
      @JsonProperty(required = true) Limit seamTexture,
      @JsonProperty(required = true) Limit seamLikeness,
      @JsonProperty(required = true) Limit seamSlope,
      @JsonProperty(required = true) Limit seamRoughShare,
      @JsonProperty(required = true) Limit seamBlocks) {

    public JpegLimits jpeg() {
      return new JpegLimits(
          (int) scansMax.value(),
          (int) lastZeroBytesMax.value(),
          new JpegLimits.Range(
              blockOutOfRangeMax.value(), overshootLevelsMax.value(), fastTransformLevels.value()),
          new JpegLimits.Seam(
              seamStrength.value(),
              seamFinestSteps.value(),
              seamTexture.value(),
              seamLikeness.value(),
              seamSlope.value(),
              seamRoughShare.value(),
              (int) seamBlocks.value()));
    }
  }

  /** Sizes, in units of 10^6 bytes or pixels, and pixels a side. */
  public record Intake(
      @JsonProperty(required = true) Limit fileMegabytesMax,
      @JsonProperty(required = true) Limit pictureMegapixelsMax,
      @JsonProperty(required = true) Limit fullSizeMegapixelsMax,
      @JsonProperty(required = true) Limit sidePxMax,
      @JsonProperty(required = true) Limit sidePxMin,
      @JsonProperty(required = true) Limit workingMegabytesMax) {

    public Intake {
      if (fullSizeMegapixelsMax.value() > pictureMegapixelsMax.value()) {
        throw new IllegalArgumentException(
            "full_size_megapixels_max must not exceed picture_megapixels_max");
      }
      if (sidePxMin.value() > sidePxMax.value()) {
        throw new IllegalArgumentException("side_px_min must not exceed side_px_max");
      }
      if (fileMegabytesMax.value() > Integer.MAX_VALUE / 1e6) {
        throw new IllegalArgumentException("file_megabytes_max must be below 2147");
      }
    }
  }

  /** Time for all of a photo; time and memory for decoding in a process apart. */
  public record Cost(
      @JsonProperty(required = true) Limit photoSecondsMax,
      @JsonProperty(required = true) Limit apartSecondsMax,
      @JsonProperty(required = true) Limit apartMegabytesMax) {}

  /** Directories of a chain, entries of a directory, values of an entry. */
  public record Chain(
      @JsonProperty(required = true) Limit chainMax,
      @JsonProperty(required = true) Limit entriesMax,
      @JsonProperty(required = true) Limit valuesMax) {}

  /** Bounds on {@link PictureFacts}, in their units. */
  public record Fit(
      @JsonProperty(required = true) Limit sharpEdgePx,
      @JsonProperty(required = true) Limit edgeBlurPxMax,
      @JsonProperty(required = true) Limit edgeBlurOfPitchFull,
      @JsonProperty(required = true) Limit burntOutShareMax,
      @JsonProperty(required = true) Limit blackShareMax,
      @JsonProperty(required = true) Limit contrastMin,
      @JsonProperty(required = true) Limit noiseMax) {}

  /** The built-in limits. */
  public static PhotoLimits standard() {
    return DataFile.builtIn("photo/limits.json").read(PhotoLimits.class);
  }
}
