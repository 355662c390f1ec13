package leadlight.rowcheck;

import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;

/** Looks about a row for the place that is least strange. */
final class Surroundings {

  private final RowEye eye;
  private final RowLimits.Search search = RowLimits.builtIn().search();

  Surroundings(RowEye eye) {
    this.eye = eye;
  }

  /** The row moved nearer to the body or farther from it, and a little aside. */
  RowOutcome.Found leastStrange(Photo photo, RowOutcome.Found row) {
    Walk walk = new Walk(photo, row);
    walk.about(search.stepsAcross(), search.stepsAlong());
    walk.halves();
    return walk.end();
  }

  /** The row moved aside alone. */
  RowOutcome.Found aside(Photo photo, RowOutcome.Found row) {
    Walk walk = new Walk(photo, row);
    walk.about(search.stepsAcross(), 0);
    return walk.end();
  }

  /** Steps to the least strange place. */
  private final class Walk {

    private final Photo photo;
    private final RowOutcome.Found row;
    private final RowSample few;
    private double du;
    private double dv;
    private double least;

    Walk(Photo photo, RowOutcome.Found row) {
      this.photo = photo;
      this.row = row;
      this.few = eye.sample(row);
      this.least = look(0, 0);
    }

    /** All places so many steps about. */
    void about(int across, int along) {
      for (int u = -across; u <= across; u++) {
        for (int v = -along; v <= along; v++) {
          visit(u * search.stepAcross(), v * search.stepAlong());
        }
      }
    }

    /** Half a step to each side, along the leads first. */
    void halves() {
      for (int side = -1; side <= 1; side += 2) {
        visit(du, dv + side * search.stepAlong() / 2);
      }
      for (int side = -1; side <= 1; side += 2) {
        visit(du + side * search.stepAcross() / 2, dv);
      }
    }

    private void visit(double u, double v) {
      if (u == du && v == dv) {
        return;
      }
      double strangeness = look(u, v);
      if (strangeness < least) {
        least = strangeness;
        du = u;
        dv = v;
      }
    }

    private double look(double u, double v) {
      RowOutcome.Found there = MovedRow.by(few.row(), u, v, 0);
      return eye.strangeness(photo, new RowSample(few.spec(), there));
    }

    RowOutcome.Found end() {
      return du == 0 && dv == 0 ? row : MovedRow.by(row, du, dv, search.leavesOpen());
    }
  }
}
