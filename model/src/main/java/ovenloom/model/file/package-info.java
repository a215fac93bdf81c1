/**
 * Reads an event from what people write by hand, writes it back, and says what is wrong with a file and where. {@link
 * ovenloom.model.file.ProblemFile} is the door.
 */
@NullMarked
package ovenloom.model.file;

import org.jspecify.annotations.NullMarked;
