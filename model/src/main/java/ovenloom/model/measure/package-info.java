/** How much, how long and how hot: stretches of time, temperatures, lengths and amounts as cooks write them. */
@NullMarked
package ovenloom.model.measure;

import org.jspecify.annotations.NullMarked;
