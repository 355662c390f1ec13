package leadlight.joint.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class EdgesTest {

  private static double[] step(double height) {
    double[] profile = new double[20];
    Arrays.fill(profile, 10, 20, height);
    return profile;
  }

  @Test
  void anEdgeOfColourAloneCountsAsOneOfLight() {
    double[] flat = new double[20];

    assertThat(Edges.of(new double[][] {flat, step(-0.3)}))
        .containsExactly(Edges.of(new double[][] {step(0.3), flat}));
  }

  @Test
  void planesAddUpAsTheRootOfTheirSquares() {
    double light = Edges.of(new double[][] {step(0.3)})[9];
    double both = Edges.of(new double[][] {step(0.3), step(0.4)})[9];

    assertThat(both / light).isEqualTo(0.5 / 0.3, within(1e-9));
  }

  @Test
  void anEdgeIsFoundOnePixelAsideAndNotFarther() {
    double[] edges = {0, 0, 0, 2, 0, 0};

    assertThat(Edges.near(edges, 2)).isEqualTo(2);
    assertThat(Edges.near(edges, 1)).isZero();
    assertThat(Edges.near(edges, 6)).isZero();
    assertThat(Edges.near(edges, 40)).isZero();
  }
}
