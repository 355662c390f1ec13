/**
 * What is to be said to a person, as codes with arguments: doubts, notes, reasons. No sentence is
 * made here.
 *
 * <p>In: codes and arguments. Out: immutable values. May use: {@code model}.
 */
package leadlight.model.remark;
