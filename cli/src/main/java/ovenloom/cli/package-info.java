/** The front door: takes the words typed to the command that knows them. */
@NullMarked
package ovenloom.cli;

import org.jspecify.annotations.NullMarked;
