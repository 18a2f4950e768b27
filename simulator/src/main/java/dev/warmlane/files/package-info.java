/**
 * Files and text that come from outside or go there: bounded reading, printable words, sets written whole.
 *
 * <p>The rest of the library knows files in readers and writers alone, and those come here. What a person names may be
 * anything, a folder or a device without an end: {@link dev.warmlane.files.BoundedFile} reads no more than it is told to.
 * Text from outside may command a terminal or turn the direction of what stands beside it:
 * {@link dev.warmlane.files.Printable} shows each such character as its number. Files that belong together are written
 * all or not at all, one run at a time, by {@link dev.warmlane.files.FileSet}.
 *
 * <p>Nothing is modelled here and nothing has a source; the limits of size are our own choice and stand where they hold.
 * Start reading at {@code Printable}.
 */
@NullMarked
package dev.warmlane.files;

import org.jspecify.annotations.NullMarked;
