namespace Gylebook.Science.Liquids;

/// <summary>The two published polynomials that give strength from gravity, as printed.</summary>
/// <remarks>
/// <para>P = p₃S³ + p₂S² + p₁S + p₀</para>
/// <para>Symbols: P strength, °P or °Bx; S gravity 20/20 °C in air.</para>
/// <para>Source: <c>asbc-cubic</c>, a fit to Table 1 of the ASBC Methods of Analysis; <c>nbs-cubic</c>, a fit to the
/// sucrose table of <c>nbs-c440</c>. Both were read in an encyclopedia, not in the originals.</para>
/// <para>Valid for: the first 0 to 20 °P, the second 0 to 40 °Bx.</para>
/// <para>Accuracy: against the table, the first 0.001 °P to 20 °P (−0.003 at water, −0.007 at 25, −0.025 at 30);
/// the second 0.001 °Bx (0.005 at water).</para>
/// <para>Notes: neither gives 0 for water. <see cref="SucroseSolution"/> does, and is what the forecast uses; these
/// stand here so that a brewer can check against the books.</para>
/// </remarks>
public static class PlatoPolynomials
{
    /// <summary>Strength in °P by the ASBC cubic.</summary>
    public static double AsbcPlatoAt(double gravity) =>
        -616.868 + (gravity * (1111.14 + (gravity * (-630.272 + (gravity * 135.997)))));

    /// <summary>Strength in °Bx by the NBS cubic.</summary>
    public static double NbsBrixAt(double gravity) =>
        -669.56218 + (gravity * (1262.7794 + (gravity * (-775.68212 + (gravity * 182.46007)))));
}
