package dev.warmlane.collector;

/** How a collector turns irradiance and warmth into useful heat: from its build, or from a test certificate. */
public sealed interface CollectorModel permits Absorber, CertificateCurve {}
