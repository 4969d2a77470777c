// Answers questions about solids with Open CASCADE. One question a line of standard input, in postfix: numbers and shapes are
// pushed, operations take what they need off the stack; one number a line of output, with 15 digits.
//   x y z dx dy dz r h cylinder   x y z r ball   z0 r0 z1 r1 cone (about Z)   a b cut   a b common   a b fuse
//   r z start, then r z line or rm zm r z arc (through the middle one): a profile, which ends in one of
//     turned (closed over the axis, turned about Z)   degrees swung (closed in itself, turned about Z from +X on)
//     ox oy oz ux uy uz vx vy vz h prism (closed in itself, with r along u and z along v from o; a sheet where h is 0)
//   a ox oy oz wx wy wz xx xy xz place (what was drawn about Z from the origin: there, Z along w, +X towards x)
//   a k stretch (along Z from the origin)   a x y z r round (the edge through a point)
//   a ox oy oz nx ny nz h slice (what a plane cuts of it, drawn out to h on either side)
//   a volume   a area   a b meet (length of the curves in which their surfaces meet)
#include <BRepAlgoAPI_Common.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepAlgoAPI_Section.hxx>
#include <BRepBuilderAPI_GTransform.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeVertex.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepExtrema_DistShapeShape.hxx>
#include <BRepFilletAPI_MakeFillet.hxx>
#include <BRepGProp.hxx>
#include <BRepPrimAPI_MakeCone.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <BRepPrimAPI_MakeSphere.hxx>
#include <GC_MakeArcOfCircle.hxx>
#include <GProp_GProps.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Ax1.hxx>
#include <gp_Ax2.hxx>
#include <gp_Ax3.hxx>
#include <gp_GTrsf.hxx>
#include <gp_Pln.hxx>
#include <cmath>
#include <cstdio>
#include <iostream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

std::vector<double> numbers;
std::vector<TopoDS_Shape> shapes;

double number() {
    if (numbers.empty()) throw std::runtime_error("a number is missing");
    double last = numbers.back();
    numbers.pop_back();
    return last;
}

TopoDS_Shape shape() {
    if (shapes.empty()) throw std::runtime_error("a shape is missing");
    TopoDS_Shape last = shapes.back();
    shapes.pop_back();
    return last;
}

void cylinder() {
    double h = number(), r = number(), dz = number(), dy = number(), dx = number(), z = number(), y = number(), x = number();
    shapes.push_back(BRepPrimAPI_MakeCylinder(gp_Ax2(gp_Pnt(x, y, z), gp_Dir(dx, dy, dz)), r, h).Shape());
}

void ball() {
    double r = number(), z = number(), y = number(), x = number();
    shapes.push_back(BRepPrimAPI_MakeSphere(gp_Pnt(x, y, z), r).Shape());
}

void cone() {
    double r1 = number(), z1 = number(), r0 = number(), z0 = number();
    shapes.push_back(BRepPrimAPI_MakeCone(gp_Ax2(gp_Pnt(0, 0, z0), gp_Dir(0, 0, 1)), r0, r1, z1 - z0).Shape());
}

BRepBuilderAPI_MakeWire profile;
gp_Pnt first, last;

gp_Pnt point() {
    double z = number(), r = number();
    return gp_Pnt(r, 0, z);
}

void start() {
    profile = BRepBuilderAPI_MakeWire();
    first = last = point();
}

void line(const gp_Pnt &to) {
    if (last.Distance(to) > 1e-9) profile.Add(BRepBuilderAPI_MakeEdge(last, to).Edge());
    last = to;
}

void arc() {
    gp_Pnt to = point(), middle = point();
    profile.Add(BRepBuilderAPI_MakeEdge(GC_MakeArcOfCircle(last, middle, to).Value()).Edge());
    last = to;
}

void turned() {
    line(gp_Pnt(0, 0, last.Z()));
    line(gp_Pnt(0, 0, first.Z()));
    line(first);
    shapes.push_back(BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(profile.Wire()).Face(), gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1))).Shape());
}

void swung() {
    double degrees = number();
    line(first);
    shapes.push_back(BRepPrimAPI_MakeRevol(BRepBuilderAPI_MakeFace(profile.Wire()).Face(), gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1)),
                                           degrees * std::acos(-1.0) / 180).Shape());
}

gp_XYZ triple() {
    double z = number(), y = number(), x = number();
    return gp_XYZ(x, y, z);
}

void prism() {
    double h = number();
    gp_XYZ v = triple(), u = triple(), origin = triple();
    line(first);
    TopoDS_Shape drawn = BRepBuilderAPI_MakeFace(profile.Wire()).Face();
    gp_Ax3 from(gp_Pnt(0, 0, 0), gp_Dir(0, -1, 0), gp_Dir(1, 0, 0)), to(gp_Pnt(origin), gp_Dir(u ^ v), gp_Dir(u));
    gp_Trsf placed;
    placed.SetDisplacement(from, to);
    TopoDS_Shape face = BRepBuilderAPI_Transform(drawn, placed, true).Shape();
    shapes.push_back(h == 0 ? face : BRepPrimAPI_MakePrism(face, gp_Vec(to.Direction()) * h).Shape());
}

void place() {
    gp_XYZ x = triple(), way = triple(), origin = triple();
    gp_Trsf placed;
    placed.SetDisplacement(gp_Ax3(), gp_Ax3(gp_Pnt(origin), gp_Dir(way), gp_Dir(x)));
    shapes.push_back(BRepBuilderAPI_Transform(shape(), placed, true).Shape());
}

void slice() {
    double h = number();
    gp_Dir normal(triple());
    gp_Pnt origin(triple());
    double far = 1e4;  // mm
    TopoDS_Shape plane = BRepBuilderAPI_MakeFace(gp_Pln(origin, normal), -far, far, -far, far).Face();
    BRepAlgoAPI_Common cut(plane, shape());
    gp_Trsf back;
    back.SetTranslation(gp_Vec(normal) * -h);
    shapes.push_back(BRepPrimAPI_MakePrism(cut.Shape().Moved(back), gp_Vec(normal) * (2 * h)).Shape());
}

void round() {
    double r = number();
    TopoDS_Shape through = BRepBuilderAPI_MakeVertex(gp_Pnt(triple())).Shape(), whole = shape();
    for (TopExp_Explorer edges(whole, TopAbs_EDGE); edges.More(); edges.Next()) {
        if (BRepExtrema_DistShapeShape(edges.Current(), through).Value() > 1e-6) continue;
        BRepFilletAPI_MakeFillet rounded(whole);
        rounded.Add(r, TopoDS::Edge(edges.Current()));
        shapes.push_back(rounded.Shape());
        return;
    }
    throw std::runtime_error("no edge there");
}

void stretch() {
    gp_GTrsf along;
    along.SetValue(3, 3, number());
    shapes.push_back(BRepBuilderAPI_GTransform(shape(), along, true).Shape());
}

template <class Operation> void combine() {
    TopoDS_Shape b = shape(), a = shape();
    Operation operation(a, b);
    if (!operation.IsDone()) throw std::runtime_error("the operation failed");
    shapes.push_back(operation.Shape());
}

void measure(const std::string &word) {
    GProp_GProps found;
    if (word == "volume") {
        BRepGProp::VolumeProperties(shape(), found, 1e-9);
    } else if (word == "area") {
        BRepGProp::SurfaceProperties(shape(), found, 1e-9);
    } else {
        TopoDS_Shape b = shape(), a = shape();
        BRepAlgoAPI_Section section(a, b, false);
        section.Approximation(true);
        section.Build();
        BRepGProp::LinearProperties(section.Shape(), found);
    }
    numbers.push_back(found.Mass());
}

void take(const std::string &word) {
    if (word == "cylinder") cylinder();
    else if (word == "ball") ball();
    else if (word == "cone") cone();
    else if (word == "start") start();
    else if (word == "line") line(point());
    else if (word == "arc") arc();
    else if (word == "turned") turned();
    else if (word == "swung") swung();
    else if (word == "prism") prism();
    else if (word == "place") place();
    else if (word == "slice") slice();
    else if (word == "round") round();
    else if (word == "stretch") stretch();
    else if (word == "cut") combine<BRepAlgoAPI_Cut>();
    else if (word == "common") combine<BRepAlgoAPI_Common>();
    else if (word == "fuse") combine<BRepAlgoAPI_Fuse>();
    else if (word == "volume" || word == "area" || word == "meet") measure(word);
    else numbers.push_back(std::stod(word));
}

}  // namespace

int main() {
    std::string line, word;
    while (std::getline(std::cin, line)) {
        numbers.clear();
        shapes.clear();
        std::istringstream words(line);
        try {
            while (words >> word) take(word);
            std::printf("%.15g\n", number());
        } catch (const Standard_Failure &failure) {
            std::printf("nan\n");
            std::cerr << line << ": " << failure.GetMessageString() << "\n";
        } catch (const std::exception &error) {
            std::printf("nan\n");
            std::cerr << line << ": " << error.what() << "\n";
        }
    }
}
