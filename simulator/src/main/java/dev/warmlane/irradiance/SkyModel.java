package dev.warmlane.irradiance;

/**
 * How the diffuse light of the sky is spread over the sky, which decides how much of it a tilted plane gets.
 *
 * <p>All three have one form: of the diffuse irradiance of the horizontal, a share F1 comes from the direction of the
 * sun, the rest evenly from the whole sky, and a band at the horizon adds a share F2 (or takes it away). On a plane of
 * tilt β with the sun at incidence θ and zenith angle z
 *
 * <p>{@code D_plane = D·[F1·max(0, cosθ)/max(cos 85°, cos z) + (1 - F1)·(1 + cosβ)/2 + F2·sinβ]}
 */
public enum SkyModel {
    /**
     * F1 and F2 from clearness, brightness and height of the sun: Perez, Ineichen, Seals, Michalsky and Stewart 1990
     * (Solar Energy 44:271-289), coefficients of table 6, all sites together. The default.
     */
    PEREZ,
    /**
     * F1 is the anisotropy index, direct normal over extraterrestrial normal irradiance; F2 is 0: Hay and Davies 1980
     * (First Canadian Solar Radiation Data Workshop, p. 59; from memory). The floor of cos 85° under the height of the
     * sun is taken over from Perez; the source has none.
     */
    HAY_DAVIES,
    /** F1 and F2 are 0: the whole sky equally bright, Liu and Jordan 1963 (Solar Energy 7:53-74; from memory). */
    ISOTROPIC
}
