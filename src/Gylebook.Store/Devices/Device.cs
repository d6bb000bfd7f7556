using Gylebook.Gyles.Cellar;

namespace Gylebook.Store;

/// <summary>Sorts of devices. Their names stand in books: none changes what it means.</summary>
public enum DeviceKind
{
    /// <summary>A float that tells the gravity, and often the temperature.</summary>
    Floating,

    /// <summary>A thermometer.</summary>
    Thermometer,

    /// <summary>A pressure gauge, or whatever else sends.</summary>
    Other,

    /// <summary>Not a thing but a table: readings that came in files. It has no token.</summary>
    Table,
}

/// <summary>A device as it stands.</summary>
/// <param name="Id">Which.</param>
/// <param name="Name">What the brewer calls it.</param>
/// <param name="Kind">What it is.</param>
/// <param name="MaySend">Whether it has a token and is not retired.</param>
/// <param name="Calibration">How its values are brought to what is so.</param>
/// <param name="Created">Since when the book knows it.</param>
/// <param name="Retired">Since when nothing is taken from it; null while it is in use.</param>
/// <param name="Place">Where it is now; null for nowhere.</param>
public sealed record Device(
    long Id,
    string Name,
    DeviceKind Kind,
    bool MaySend,
    DeviceCalibration Calibration,
    DateTimeOffset Created,
    DateTimeOffset? Retired,
    DevicePlace? Place);

/// <summary>A time in which a device was in a portion.</summary>
/// <param name="DeviceId">Which device.</param>
/// <param name="PortionId">Which portion.</param>
/// <param name="GyleId">Of which gyle.</param>
/// <param name="Gyle">What that is called.</param>
/// <param name="Portion">What the portion is called.</param>
/// <param name="From">Since when.</param>
/// <param name="Until">Until when; null while it is there.</param>
public sealed record DevicePlace(long DeviceId, long PortionId, Guid GyleId, string Gyle, string Portion, DateTimeOffset From, DateTimeOffset? Until);
