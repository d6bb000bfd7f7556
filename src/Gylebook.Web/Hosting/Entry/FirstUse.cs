using System.Security.Cryptography;
using System.Text;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>The code that the terminal prints while the book has no password: whoever reads it may choose one, and nobody else on the network.</summary>
public sealed class FirstUse
{
    /// <summary>No letter that looks like another.</summary>
    private const string Letters = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";

    private const int Length = 8;

    /// <summary>The code, as it is printed. It lives as long as the program, and opens nothing once there is a password.</summary>
    public string Code { get; } = RandomNumberGenerator.GetString(Letters, Length);

    /// <summary>Whether that is the code.</summary>
    public bool IsCode(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(typed.Trim().ToUpperInvariant()), Encoding.UTF8.GetBytes(Code));
    }
}
