namespace Vessel.Export;

/// <summary>Passes writes on and hashes them (SHA-256), without a copy of what may be a hundred megabytes.</summary>
internal sealed class HashedStream(Stream to) : ForwardStream(to)
{
    private readonly Sha256 _hash = new();

    /// <summary>Hash of all that was written, lower-case hexadecimal; nothing is written after it.</summary>
    public string Hash() => Convert.ToHexStringLower(_hash.Finished());

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        _hash.Add(buffer);
        base.Write(buffer);
    }
}
