/** What stands on each rack and shelf, where on it and when. {@link ovenloom.cli.stand.Stands} is the way in. */
@NullMarked
package ovenloom.cli.stand;

import org.jspecify.annotations.NullMarked;
