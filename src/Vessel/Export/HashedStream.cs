using System.Security.Cryptography;

namespace Vessel.Export;

/// <summary>Passes writes on and hashes them (SHA-256), without a copy of what may be a hundred megabytes.</summary>
internal sealed class HashedStream(Stream to) : ForwardStream(to)
{
    private readonly IncrementalHash _hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    /// <summary>Of all that was written, lower-case hexadecimal.</summary>
    public string Hash() => Convert.ToHexStringLower(_hash.GetCurrentHash());

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        _hash.AppendData(buffer);
        base.Write(buffer);
    }

    protected override void Dispose(bool disposing)
    {
        _hash.Dispose();
        base.Dispose(disposing);
    }
}
