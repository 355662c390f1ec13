/**
 * Data files: the built-in ones of {@code models/}, packed into the program, and the user's own.
 *
 * <p>In: the name of a built-in file or a path. Out: records, or one line that says where the file
 * is wrong. May use: {@code model}, Jackson. Every package that needs figures from {@code models/}
 * reads them through {@link leadlight.data.DataFile}.
 */
package leadlight.data;
