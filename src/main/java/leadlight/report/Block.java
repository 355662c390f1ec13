package leadlight.report;

/** A part of the annotated picture; its place is found before anything is painted. */
interface Block {

  int heightPx();

  void paint(Pen pen, int x, int y);
}
