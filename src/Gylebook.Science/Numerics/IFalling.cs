namespace Gylebook.Science.Numerics;

/// <summary>A function that falls, as a value: a loop that runs thousands of times makes no closure for it.</summary>
public interface IFalling
{
    /// <summary>Its value there.</summary>
    double At(double at);
}

/// <summary>A smooth function that falls, with its slope.</summary>
public interface ISlope
{
    /// <summary>Its value there, and by how much it changes for each step of one: below nought.</summary>
    double At(double at, out double slope);
}
