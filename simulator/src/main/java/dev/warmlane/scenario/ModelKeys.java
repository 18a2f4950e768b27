package dev.warmlane.scenario;

import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.irradiance.SkyModel;
import dev.warmlane.physics.FilmCorrelation;
import dev.warmlane.site.Roof;

/** Keys of the section models, and how their names stand for the models. */
final class ModelKeys {

    static final Key<SkyModel> SKY = Key.convention(
            "sky", WordKinds.choice(SkyModel.class), "how diffuse light is spread over the sky", SkyModel.PEREZ);
    static final Key<Film> FILM = Key.convention(
            "film",
            WordKinds.choice(Film.class),
            "film coefficient of a collector's face: by the physics, or by a published fit of the wind alone",
            Film.PHYSICAL);

    static final SectionSchema MODELS = SectionSchema.optional(
            "models", "published models to compare with; leave it out for the usual ones", SKY, FILM);

    private ModelKeys() {}

    /** The film correlations by name. */
    enum Film {
        PHYSICAL,
        WATMUFF,
        MCADAMS,
        TEST,
        SHARPLES,
        MITCHELL;

        /** The correlation; Mitchell's takes its length from the building below the roof. */
        FilmCorrelation on(Roof roof) {
            return switch (this) {
                case PHYSICAL -> FilmCorrelation.PHYSICAL;
                case WATMUFF -> FilmCorrelation.Linear.WATMUFF;
                case MCADAMS -> FilmCorrelation.Linear.MCADAMS;
                case TEST -> FilmCorrelation.Linear.TEST;
                case SHARPLES -> FilmCorrelation.Linear.SHARPLES;
                case MITCHELL -> new FilmCorrelation.Mitchell(roof.areaM2() * roof.heightM());
            };
        }

        static Film of(FilmCorrelation film) {
            return film.match(
                    physical -> PHYSICAL,
                    fit -> fit instanceof FilmCorrelation.Linear linear ? valueOf(linear.name()) : MITCHELL,
                    face -> {
                        throw new IllegalArgumentException("no film correlation of the file is a function of the face");
                    });
        }
    }

    static CollectorPhysics physics(Section s, Roof roof) {
        return new CollectorPhysics(s.get(SKY), s.get(FILM).on(roof));
    }
}
