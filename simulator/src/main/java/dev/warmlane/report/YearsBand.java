package dev.warmlane.report;

import dev.warmlane.study.YearNumber;
import dev.warmlane.study.YearsStudy;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a forecast's sheet says of real years beside its typical one: a band of the weather, beside that of the wind. */
final class YearsBand {

    private static final List<YearNumber> TOLD =
            List.of(YearNumber.WATER_MEAN, YearNumber.DAYS_AT_COMFORT, YearNumber.GAS_BURNED, YearNumber.SAVED);

    private YearsBand() {}

    /** Empty where no years are given. */
    static Section of(Subject subject, Optional<YearsStudy> years) {
        Section section = Section.of("Good years and bad", Place.ANSWER);
        return years.map(study -> of(section, subject, study)).orElse(section);
    }

    private static Section of(Section section, Subject subject, YearsStudy study) {
        YearWords words = new YearWords(study, subject.numbers());
        StringBuilder text = new StringBuilder("All else is of a typical year. The same pool in ")
                .append(words.years())
                .append('.');
        for (YearNumber number : words.telling(TOLD)) {
            study.spread(number).ifPresent(spread -> text.append(' ').append(words.told(spread)));
        }
        return section.words(text
                        + " This is the weather alone; how sheltered the pool lies is as uncertain in each of these years, and"
                        + " comes on top.")
                .with(Place.DETAIL, YearsTables.spread(study, subject.numbers()))
                .with(Set.of(Place.TECHNICAL), words.picture());
    }
}
