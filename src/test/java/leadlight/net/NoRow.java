package leadlight.net;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/** Things that stand in rows and are no leads, drawn simply. */
enum NoRow {
  FENCE(20, NoRow::fence),
  BARS(20, NoRow::bars),
  COMB(24, NoRow::comb),
  RULER(31, NoRow::ruler),
  KEYS(19, NoRow::keys),
  SLANTED_STRIPES(16, NoRow::slantedStripes),
  LADDER(14, NoRow::ladder),
  PERFORATION(22, NoRow::perforation);

  private static final int WIDTH = 640;
  private static final int HEIGHT = 300;
  private static final int STEP = 26;
  private static final Color BOARD = new Color(28, 86, 52);

  private final int things;
  private final Consumer<Graphics2D> how;

  NoRow(int things, Consumer<Graphics2D> how) {
    this.things = things;
    this.how = how;
  }

  /** How many things stand in it: the number of leads that a user would count. */
  int things() {
    return things;
  }

  BufferedImage draw() {
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(BOARD);
    pen.fillRect(0, 0, WIDTH, HEIGHT);
    how.accept(pen);
    pen.dispose();
    return picture;
  }

  /** Grey bars that hang from a black one. */
  private static void fence(Graphics2D pen) {
    pen.setColor(Color.BLACK);
    pen.fillRect(30, 40, 580, 60);
    pen.setColor(Color.GRAY);
    for (int i = 0; i < 20; i++) {
      pen.fillRect(66 + i * STEP, 100, 11, 90);
    }
  }

  private static void bars(Graphics2D pen) {
    pen.setColor(new Color(190, 190, 186));
    for (int i = 0; i < 20; i++) {
      pen.fillRect(66 + i * STEP, 90, 13, 110);
    }
  }

  private static void comb(Graphics2D pen) {
    pen.setColor(new Color(60, 40, 24));
    pen.fillRoundRect(30, 50, 590, 50, 20, 20);
    for (int i = 0; i < 24; i++) {
      pen.fillPolygon(
          new int[] {40 + i * 24, 54 + i * 24, 48 + i * 24, 46 + i * 24},
          new int[] {95, 95, 230, 230},
          4);
    }
  }

  private static void ruler(Graphics2D pen) {
    pen.setColor(new Color(206, 208, 205));
    pen.fillRect(0, 60, WIDTH, 170);
    pen.setColor(new Color(20, 20, 22));
    pen.setStroke(new BasicStroke(3));
    for (int i = 0; i < 31; i++) {
      pen.drawLine(12 + i * 20, 60, 12 + i * 20, i % 10 == 0 ? 140 : i % 5 == 0 ? 120 : 100);
      if (i % 10 == 0) {
        pen.drawString("" + i / 10, 16 + i * 20, 160);
      }
    }
  }

  private static void keys(Graphics2D pen) {
    pen.setColor(Color.BLACK);
    pen.fillRect(20, 30, 600, 40);
    for (int i = 0; i < 19; i++) {
      pen.setColor(new Color(176, 178, 180));
      pen.fillRoundRect(40 + i * 29, 70, 26, 150, 6, 6);
      pen.setColor(new Color(200, 202, 204));
      pen.fillRect(43 + i * 29, 72, 20, 120);
    }
  }

  private static void slantedStripes(Graphics2D pen) {
    pen.rotate(0.3, WIDTH / 2.0, HEIGHT / 2.0);
    pen.setColor(new Color(225, 205, 90));
    for (int i = 0; i < 16; i++) {
      pen.fillRect(110 + i * STEP, 60, 14, 180);
    }
  }

  private static void ladder(Graphics2D pen) {
    pen.setColor(new Color(150, 150, 150));
    pen.fillRect(30, 80, 580, 14);
    pen.fillRect(30, 200, 580, 14);
    for (int i = 0; i < 14; i++) {
      pen.fillRect(60 + i * 39, 80, 12, 130);
    }
  }

  private static void perforation(Graphics2D pen) {
    pen.setColor(new Color(30, 30, 30));
    pen.fillRect(0, 0, WIDTH, 150);
    pen.setColor(new Color(230, 232, 228));
    for (int i = 0; i < 22; i++) {
      pen.fillRoundRect(30 + i * STEP, 110, 15, 24, 6, 6);
    }
  }
}
