using Vessel.Design;

namespace Vessel.Reading;

/// <summary>Whether a path names a key that the file may have, whether or not it is written in it.</summary>
public static class KeyPaths
{
    /// <param name="path">Path such as <c>ports[0].tube.wall</c>; the empty path is the file itself.</param>
    public static bool Exist(string path)
    {
        IReadOnlyList<KeyMap> maps = [KeyTable.File];
        foreach (var step in path.Length == 0 ? [] : path.Split('.'))
        {
            var name = step.Split('[')[0];
            if (name != step && !step.EndsWith(']'))
                return false;
            var keys = maps.Select(map => map.Find(name)).OfType<Key>()
                .Where(key => name == step || key.Kind is KeyKind.List or KeyKind.OneOrList or KeyKind.Texts).ToList();
            if (keys.Count == 0)
                return false;
            // Below a switch any of its choices will do; named sizes and variants have names of the user's own.
            if (keys.Exists(key => key.Kind is KeyKind.Sizes or KeyKind.Variants))
                return true;
            maps = [.. keys.SelectMany(key => key.Switch is { } choice ? choice.Maps.Values : key.Map is { } map ? [map] : [])];
        }

        return true;
    }
}
