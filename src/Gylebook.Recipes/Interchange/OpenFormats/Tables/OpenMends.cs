namespace Gylebook.Recipes.Interchange.OpenFormats.Tables;

/// <summary>Numbers that are plainly meant otherwise than they stand.</summary>
internal static class OpenMends
{
    /// <summary>A gravity of a thousand and some, "1053" for 1.053.</summary>
    public static double Gravity(double number, OpenUnit unit, OpenCursor at)
    {
        if (unit.Ours != "SG" || number is < 900 or > 1300)
        {
            return number;
        }

        double meant = number / 1000;
        at.Repair($"{OpenUnits.Digits(number)} as a gravity; read as {OpenUnits.Digits(meant)}");
        return meant;
    }
}
