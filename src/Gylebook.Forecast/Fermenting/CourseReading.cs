namespace Gylebook.Forecast.Fermenting;

/// <summary>A gravity read while the beer ferments.</summary>
/// <param name="Hours">Since pitching, from 0 up.</param>
/// <param name="Gravity">What was read, SG, brought to 20 °C.</param>
/// <param name="Deviation">Standard deviation of one reading, SG, besides what is wrong with all of them; above 0.</param>
public readonly record struct CourseReading(double Hours, double Gravity, double Deviation);
