/** Several plans side by side: figures, what is proven of which is better, what a change buys, and what is done otherwise. */
@NullMarked
package ovenloom.cli.compare;

import org.jspecify.annotations.NullMarked;
