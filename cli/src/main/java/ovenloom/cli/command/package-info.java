/**
 * The words that are typed, one class a command. {@link ovenloom.cli.command.Ovenloom} knows them all; results go to one
 * writer, everything else to another.
 */
@NullMarked
package ovenloom.cli.command;

import org.jspecify.annotations.NullMarked;
