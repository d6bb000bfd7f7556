using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Gylebook.Store;

namespace Gylebook.Web.Features.Devices;

/// <summary>A device that was just given a token.</summary>
/// <param name="Id">Which device.</param>
/// <param name="Token">Said once: the book keeps only what it hashes to.</param>
public sealed record NewToken(long Id, string Token);

/// <summary>Devices as pages and terminal work with them: added, and given tokens.</summary>
/// <param name="book">The book.</param>
public sealed class DeviceDesk(Book book)
{
    private const int TokenBytes = 24;

    /// <summary>Longer than any token of ours; hashing a book would be work for nothing.</summary>
    public const int LongestToken = 200;

    /// <summary>Adds a device that may send.</summary>
    /// <exception cref="ArgumentException">There is no name, or it is too long.</exception>
    public async Task<NewToken> AddAsync(string name, DeviceKind kind, CancellationToken cancellation = default)
    {
        string token = Made();
        return new NewToken(await book.Devices.AddAsync(name, kind, HashOf(token), cancellation), token);
    }

    /// <summary>Gives a device another token; the one before is worth nothing from then on.</summary>
    public async Task<NewToken> RenewAsync(long id, CancellationToken cancellation = default)
    {
        string token = Made();
        await book.Devices.SetTokenAsync(id, HashOf(token), cancellation);
        return new NewToken(id, token);
    }

    /// <summary>Which device in use has that token; null for none.</summary>
    public async Task<long?> FindAsync(string token, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(token);
        return token.Length is > 0 and <= LongestToken ? await book.Devices.FindByTokenAsync(HashOf(token), cancellation) : null;
    }

    /// <summary>What a token hashes to. It is 192 bits of chance, which nobody guesses: one round of SHA-256 is enough.</summary>
    private static string HashOf(string token) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(token)));

    private static string Made() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(TokenBytes));
}
