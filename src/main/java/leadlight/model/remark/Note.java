package leadlight.model.remark;

/**
 * What is to be said of a photo, a row or a finding: why no row was found, what to change, what was
 * measured, what a verdict rests on, what to mind at the bench.
 */
public sealed interface Note extends Remark permits NoteOfRow, NoteOfPhoto, NoteOfJoint {}
