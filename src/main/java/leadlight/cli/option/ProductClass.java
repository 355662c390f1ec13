package leadlight.cli.option;

import leadlight.model.UserError;

/** The product class that a person gives. */
public final class ProductClass {

  private ProductClass() {}

  /**
   * Refuses what is no class.
   *
   * @throws UserError if it is not 1, 2 or 3
   */
  public static void check(int productClass) {
    if (productClass < 1 || productClass > 3) {
      throw new UserError("--class must be 1, 2 or 3, is " + productClass);
    }
  }
}
