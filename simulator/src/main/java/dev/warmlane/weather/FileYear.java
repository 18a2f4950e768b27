package dev.warmlane.weather;

import java.util.function.Function;

/** One calendar year of a file of real weather: sound, or left out with the reason. */
public sealed interface FileYear {

    /** The calendar year. */
    int year();

    /** Answers for whichever of the two it is. */
    <T> T match(Function<? super Sound, ? extends T> sound, Function<? super LeftOut, ? extends T> leftOut);

    /**
     * A year that went through the same checks and repairs as a typical one; 29 February is left out.
     *
     * @param year the calendar year
     * @param weather its weather, with what was found and mended in it
     */
    record Sound(int year, WeatherYear weather) implements FileYear {
        @Override
        public <T> T match(Function<? super Sound, ? extends T> sound, Function<? super LeftOut, ? extends T> leftOut) {
            return sound.apply(this);
        }
    }

    /**
     * A year that cannot be trusted, or of which too little is there.
     *
     * @param year the calendar year
     * @param reason where, what was found, what was expected
     */
    record LeftOut(int year, WeatherFileException reason) implements FileYear {
        @Override
        public <T> T match(Function<? super Sound, ? extends T> sound, Function<? super LeftOut, ? extends T> leftOut) {
            return leftOut.apply(this);
        }
    }
}
