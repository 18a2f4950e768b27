package dev.warmlane.study;

import dev.warmlane.season.Installation;
import java.util.function.Function;

/** What becomes of a {@link Parameter} in an installation. */
public sealed interface Variation {

    /** One answer for each kind. Who adds a kind adds a question here, and nothing compiles until it is answered everywhere. */
    <T> T match(Function<Range, T> range, Function<NotHere, T> notHere);

    /**
     * It can be varied.
     *
     * @param described what the installation has
     * @param low the one end
     * @param high the other end
     */
    record Range(Setting described, End low, End high) implements Variation {
        @Override
        public <T> T match(Function<Range, T> range, Function<NotHere, T> notHere) {
            return range.apply(this);
        }
    }

    /**
     * One end: the same installation but for the parameter.
     *
     * @param setting what the parameter is set to
     * @param installation the installation with it
     */
    record End(Setting setting, Installation installation) {}

    /**
     * The installation has nothing of the kind, or it makes no difference there.
     *
     * @param why the reason, for people
     */
    record NotHere(String why) implements Variation {
        @Override
        public <T> T match(Function<Range, T> range, Function<NotHere, T> notHere) {
            return notHere.apply(this);
        }
    }
}
