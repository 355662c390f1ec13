package leadlight.report.paint;

/** A part of the annotated picture; its place is found before anything is painted. */
public interface Block {

  int heightPx();

  void paint(Pen pen, int x, int y);
}
