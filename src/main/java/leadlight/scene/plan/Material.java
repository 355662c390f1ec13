package leadlight.scene.plan;

/**
 * What a surface is made of, by its colour in linear light. Metals: reflectance at normal incidence
 * (tin about 0.8, lead 0.6 at 589 nm, from memory; gold and copper from their sRGB tables in
 * Akenine-Moller et al., Real-Time Rendering, 4th ed., table 9.2, from memory). Others: diffuse
 * reflectance, common practice, no source.
 */
public enum Material {
  SOLDER(true, 0.74, 0.73, 0.71),
  TIN(true, 0.80, 0.78, 0.74),
  NICKEL(true, 0.66, 0.61, 0.53),
  GOLD(true, 1.00, 0.71, 0.29),
  COPPER(true, 0.90, 0.50, 0.32),
  SILVER(true, 0.93, 0.91, 0.87),
  STEEL(true, 0.62, 0.60, 0.57),
  LAMINATE(false, 0.36, 0.28, 0.13),
  PRINT(false, 0.78, 0.78, 0.75),
  BLACK_PLASTIC(false, 0.030, 0.029, 0.028),
  GREY_PLASTIC(false, 0.16, 0.16, 0.16),
  BEIGE_PLASTIC(false, 0.60, 0.53, 0.38),
  WHITE_PLASTIC(false, 0.70, 0.69, 0.64),
  BROWN_PLASTIC(false, 0.09, 0.05, 0.03),
  FIBRE(false, 0.55, 0.55, 0.52),
  CERAMIC(false, 0.34, 0.25, 0.17),
  MASK(false, 0, 0, 0);

  public final boolean metal;
  public final double red;
  public final double green;
  public final double blue;

  Material(boolean metal, double red, double green, double blue) {
    this.metal = metal;
    this.red = red;
    this.green = green;
    this.blue = blue;
  }
}
