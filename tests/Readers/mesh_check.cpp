// Reads binary STL files and prints what each is, one line of JSON a file. Vertices are one where their floats are equal.
// g++ -O2 -std=c++17 mesh_check.cpp -o mesh_check -lgmp -lmpfr     (CGAL 5.5, Debian 12)
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/orient_polygon_soup.h>
#include <CGAL/Polygon_mesh_processing/orientation.h>
#include <CGAL/Polygon_mesh_processing/polygon_soup_to_polygon_mesh.h>
#include <CGAL/Polygon_mesh_processing/self_intersections.h>
#include <CGAL/Surface_mesh.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <fstream>
#include <iostream>
#include <iterator>
#include <limits>
#include <map>
#include <numeric>
#include <stdexcept>
#include <string>
#include <vector>

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Point = Kernel::Point_3;
using Vector = Kernel::Vector_3;
using SurfaceMesh = CGAL::Surface_mesh<Point>;
using Corner = std::array<float, 3>;
using Triangle = std::array<std::size_t, 3>;
namespace PMP = CGAL::Polygon_mesh_processing;

struct Soup {
    std::vector<Point> points;
    std::vector<Triangle> triangles;
    std::vector<Vector> normals;
};

static Soup read(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::vector<char> bytes((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    std::uint32_t count = 0;
    if (bytes.size() < 84) throw std::runtime_error("shorter than its header");
    std::memcpy(&count, &bytes[80], 4);
    if (bytes.size() != 84 + 50 * std::size_t(count)) throw std::runtime_error("size is not 84 + 50 x triangles");
    Soup soup;
    std::map<Corner, std::size_t> known;
    for (std::uint32_t t = 0; t < count; ++t) {
        float f[12];
        std::memcpy(f, &bytes[84 + 50 * std::size_t(t)], sizeof f);
        for (float value : f)
            if (!std::isfinite(value)) throw std::runtime_error("a coordinate is not finite");
        soup.normals.emplace_back(f[0], f[1], f[2]);
        Triangle triangle;
        for (int c = 0; c < 3; ++c) {
            // Adding zero makes -0 and 0 one.
            Corner corner{f[3 + 3 * c] + 0.0f, f[4 + 3 * c] + 0.0f, f[5 + 3 * c] + 0.0f};
            auto [place, fresh] = known.try_emplace(corner, soup.points.size());
            if (fresh) soup.points.emplace_back(corner[0], corner[1], corner[2]);
            triangle[c] = place->second;
        }
        soup.triangles.push_back(triangle);
    }
    return soup;
}

struct Figures {
    std::size_t degenerate = 0, open_edges = 0, wrong_normals = 0, components = 0;
    double volume = 0, area = 0, least_altitude = std::numeric_limits<double>::infinity();
    long euler = 0;
};

static std::size_t root(std::vector<std::size_t>& parent, std::size_t i) {
    while (parent[i] != i) i = parent[i] = parent[parent[i]];
    return i;
}

static Figures measure(const Soup& soup) {
    Figures f;
    struct Use { long balance = 0; std::size_t triangle = 0; };
    std::map<std::pair<std::size_t, std::size_t>, Use> edges;
    std::vector<std::size_t> parent(soup.triangles.size());
    std::iota(parent.begin(), parent.end(), 0);
    // Volume about a point of the mesh itself, lest a far-off origin cost digits.
    const Point origin = soup.points.empty() ? Point(0, 0, 0) : soup.points[0];
    for (std::size_t t = 0; t < soup.triangles.size(); ++t) {
        const Triangle& v = soup.triangles[t];
        const Vector a = soup.points[v[0]] - origin, b = soup.points[v[1]] - origin, c = soup.points[v[2]] - origin;
        const Vector across = CGAL::cross_product(b - a, c - a);
        const double twice = std::sqrt(across.squared_length());
        const double longest = std::sqrt(std::max({(b - a).squared_length(), (c - b).squared_length(), (a - c).squared_length()}));
        if (v[0] == v[1] || v[1] == v[2] || v[2] == v[0] || twice == 0) ++f.degenerate;
        const double altitude = longest > 0 ? twice / longest : 0;
        f.least_altitude = std::min(f.least_altitude, altitude);
        f.area += twice / 2;
        f.volume += a * CGAL::cross_product(b, c) / 6;
        // A thinner triangle has no direction worth comparing in single precision.
        if (altitude >= 0.001 && across * soup.normals[t] < 0.999 * twice) ++f.wrong_normals;
        for (int k = 0; k < 3; ++k) {
            const std::size_t from = v[k], to = v[(k + 1) % 3];
            auto [place, fresh] = edges.try_emplace(std::minmax(from, to));
            place->second.balance += from < to ? 1 : -1;
            if (fresh) place->second.triangle = t;
            parent[root(parent, t)] = root(parent, place->second.triangle);
        }
    }
    for (const auto& [edge, use] : edges)
        if (use.balance != 0) ++f.open_edges;
    for (std::size_t t = 0; t < parent.size(); ++t)
        if (root(parent, t) == t) ++f.components;
    f.euler = long(soup.points.size()) - long(edges.size()) + long(soup.triangles.size());
    return f;
}

static void print(const std::string& path, const Soup& soup, const Figures& f) {
    const bool manifold = PMP::is_polygon_soup_a_polygon_mesh(soup.triangles);
    bool closed = false, crosses = false, outward = false;
    if (manifold) {
        SurfaceMesh mesh;
        PMP::polygon_soup_to_polygon_mesh(soup.points, soup.triangles, mesh);
        closed = CGAL::is_closed(mesh);
        // Undefined on degenerate triangles, which are a failure anyway.
        crosses = f.degenerate == 0 && PMP::does_self_intersect(mesh);
        outward = closed && !crosses && f.degenerate == 0 && PMP::is_outward_oriented(mesh);
    }
    std::cout.precision(17);
    std::cout << std::boolalpha << "{\"file\":\"" << path << "\",\"triangles\":" << soup.triangles.size()
              << ",\"degenerate\":" << f.degenerate << ",\"open_edges\":" << f.open_edges
              << ",\"wrong_normals\":" << f.wrong_normals << ",\"components\":" << f.components
              << ",\"euler\":" << f.euler << ",\"volume_mm3\":" << f.volume << ",\"area_mm2\":" << f.area
              << ",\"least_altitude_mm\":" << (soup.triangles.empty() ? 0 : f.least_altitude)
              << ",\"manifold\":" << manifold << ",\"closed\":" << closed << ",\"self_intersects\":" << crosses
              << ",\"outward\":" << outward << "}\n";
}

int main(int count, char** paths) {
    for (int i = 1; i < count; ++i) {
        const std::string path = paths[i];
        try {
            const Soup soup = read(path);
            print(path, soup, measure(soup));
        } catch (const std::exception& error) {
            std::cout << "{\"file\":\"" << path << "\",\"error\":\"" << error.what() << "\"}\n";
        }
    }
}
